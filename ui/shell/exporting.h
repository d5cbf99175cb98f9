// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/lists.h"
#include "core/store/store.h"
#include "ui/shell/kit.h"
#include "ui/shell/place.h"
#include "ui/words/words.h"

#include <string>

/// Lists and people as files: the road that the places and the command line share.
namespace hearth::ui::shell {

/// A list as CSV, with headings and choices in the language of `words`.
[[nodiscard]] Result<std::string> listFile(exchange::ListKind kind, const store::Store& store,
                                           const Clock& clock, const words::Words& words);
/// Everybody as vCards.
[[nodiscard]] Result<std::string> peopleCards(const store::Store& store);

/// The whole store as JSON into a file, whole or not at all; with what JSON Schema describes it.
[[nodiscard]] Result<void> writeWholeStore(const store::Store& store, const Clock& clock,
                                           const QString& path);
[[nodiscard]] Result<std::string> wholeStoreSchema(const store::Store& store);
/// Makes a new store of such a file. Errors: FileUnreadable, those of exchange::readWholeJson and
/// Store::createFrom.
[[nodiscard]] Result<void> makeStoreFrom(const QString& file, const std::filesystem::path& store,
                                         const Clock& clock);

/// Asks where to, and writes it there; tells what went wrong. False: cancelled or failed.
bool exportList(exchange::ListKind kind, const Context& context, QWidget* over);
bool exportPeopleCards(const Context& context, QWidget* over);
/// Deadlines and bookings of the premises that a filter finds, for a calendar program. What was imported
/// before follows: each entry keeps its UID, and its SEQUENCE rises.
bool exportCalendar(const store::DueFilter& filter, const Context& context, QWidget* over);
/// Asks which of these lists (with people also their vCards) where there are several, then where to.
void chooseAndExport(const std::vector<exchange::ListKind>& kinds, const Context& context, QWidget* over);
/// The button that does so, with the key that all places have for it.
[[nodiscard]] KeyButton* exportButton(const std::vector<exchange::ListKind>& kinds, const Context& context,
                                      QWidget* parent);

}  // namespace hearth::ui::shell
