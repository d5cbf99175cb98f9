// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/window.h"
#include "ui/visit/part.h"

#include <QString>

#include <functional>
#include <optional>
#include <vector>

/// Pictures of every screen and every record of the demonstration firm.
namespace hearth::app::gallery {

/// The window at the moment of a picture, and what the arranging may need.
struct Scene {
    ui::shell::MainWindow& window;
    store::Store& store;
    FixedClock& clock;
};

/// One screen: its file's name without ending, and how to get there.
struct Shot {
    QString name;
    std::function<void(Scene&)> arrange;
};

/// The main window's places, in the order of its bar.
enum Places { kVisits, kPremises, kDue, kRecords, kRuleBook, kFirm, kWorkings };

/// The sheet of that visit at that part.
void showPart(Scene& scene, reg::VisitId visit, ui::visit::PartKind part);

/// What the part in view opens at the press of a button, brought to the top.
void pressToOpen(Scene& scene, const char* button, const char* opened);

/// Carbon monoxide in a room: watched live, and as it was watched.
[[nodiscard]] Result<void> addRoomShots(const store::Store& store, std::vector<Shot>& shots);

/// Screens of what the firm sets for itself; the draft is that visit's, where there is one.
void addFirmShots(std::vector<Shot>& shots, const std::optional<reg::VisitId>& openVisit);

/// Checks due: its pages, and last its list.
void addDueShots(std::vector<Shot>& shots);

/// All screens of the main window. `store` is the demonstration's: the visits shown are chosen by what is
/// found in them.
[[nodiscard]] Result<std::vector<Shot>> shotsOf(const store::Store& store);

/// The visit sheet beyond the tightness test (visit_shots.cpp).
[[nodiscard]] Result<std::vector<Shot>> visitShotsOf(const store::Store& store);

/// What is written for the picture: signatures, photographs, kinds of appliance, years, doubts about who is
/// booked. The last of all shots.
void addSheetShots(const store::Store& store, std::vector<Shot>& shots);

/// An invented sign as a PNG: a flame's drop in a ring.
[[nodiscard]] std::string inventedPicture();

/// Where pictures go, and how they are made.
struct Album {
    QString folder;
    ui::look::Scheme scheme = ui::look::Scheme::Light;
    QString language = QStringLiteral("en");
};

/// Takes every screen of the main window, the first start and the set-up. Gives how many; Error:
/// FileUnwritable.
[[nodiscard]] Result<int> takeScreens(store::Store& store, FixedClock& clock, const Album& album);

/// Every page of every record that was issued, as it is previewed and printed.
[[nodiscard]] Result<int> takeRecords(const store::Store& store, const Album& album, double dotsPerInch);

/// The same visits' records as they would be in the album's language; drafts, without a number.
[[nodiscard]] Result<int> takeDrafts(const store::Store& store, const Clock& clock, const Album& album,
                                     double dotsPerInch);

/// Saves a picture as FOLDER/NAME.png. Error: FileUnwritable.
[[nodiscard]] Result<void> keep(const QImage& picture, const Album& album, const QString& name);

}  // namespace hearth::app::gallery
