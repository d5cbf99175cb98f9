// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/clock.h"
#include "core/store/traces.h"
#include "ui/gauge/air_panel.h"
#include "ui/visit/sheet_field.h"

#include <QWidget>

class QVBoxLayout;

namespace hearth::ui::gauge {
class ProfilesPanel;
}
namespace hearth::ui::shell {
class KeyButton;
}

namespace hearth::ui::visit {

class RoomTraceTaker;
class WhatFirst;

/// Carbon monoxide watched live from outside the room, opened from an investigation. A reading that is taken
/// goes into the series at once; what was watched is kept with the visit, for its readings to be confirmed.
/// While a level was dangerous, what to do first stands above all of it.
class RoomWatch : public QWidget {
    Q_OBJECT
  public:
    RoomWatch(const SheetContext& context, QWidget* parent);

    /// Ctrl+Enter. False: the keyboard is elsewhere.
    bool toggle();
    /// After judging: the rule book's levels, and the steps by country and gas.
    void refresh();
    void setReadOnly(bool readOnly);
    /// Nothing until it was opened.
    [[nodiscard]] gauge::AirPanel* panel() const { return m_panel; }
    [[nodiscard]] RoomTraceTaker* taker() const { return m_taker; }
    [[nodiscard]] WhatFirst* whatFirst() const { return m_whatFirst; }

  Q_SIGNALS:
    void said(const QString& sentence);
    /// What has to be seen now came up.
    void urgent(QWidget* what);
    /// Fields came or went.
    void stopsChanged();

  private:
    void open();
    void makePanel();
    void setUp();
    void changeProfiles(const std::vector<gauge::GaugeProfile>& profiles);
    void showDanger(bool isDanger);
    void take(const gauge::AirTaken& reading);
    void keep(const gauge::TakenTrace& taken);
    [[nodiscard]] Result<reg::GaugeTraceId> keepTrace(const reg::TraceSource& source,
                                                      std::vector<air::CoReading> readings);
    [[nodiscard]] gauge::AirLevels levels() const;
    void refuse(const Error& error);
    void tellNotKept(const Error& error);

    SheetContext m_context;
    QVBoxLayout* m_lines;
    WhatFirst* m_whatFirst;
    shell::KeyButton* m_open;
    shell::KeyButton* m_setUp;
    shell::KeyButton* m_takeFile;
    RoomTraceTaker* m_taker;
    gauge::AirPanel* m_panel = nullptr;
    gauge::ProfilesPanel* m_profiles = nullptr;
    /// Kept so far of the watch that goes on, to be replaced by the whole of it: of practice, from the first
    /// reading taken on, so that no record says it.
    std::optional<reg::GaugeTraceId> m_keptSoFar;
};

}  // namespace hearth::ui::visit
