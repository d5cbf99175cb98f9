// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/register/gauge_trace.h"
#include "ui/gauge/profile.h"
#include "ui/visit/sheet_field.h"

#include <QWidget>

class QVBoxLayout;

namespace hearth::ui::gauge {
class LivePanel;
class ProfilesPanel;
}  // namespace hearth::ui::gauge
namespace hearth::ui::shell {
class KeyButton;
}

namespace hearth::ui::visit {

/// A gauge that sends its readings, opened from a test's part. What it records is handed on as a trace, with
/// what happened while it was watched.
class LiveGauge : public QWidget {
    Q_OBJECT
  public:
    /// `of` goes before the accessible name where a visit has several tests.
    LiveGauge(const SheetContext& context, const QString& of, QWidget* parent);

    /// Ctrl+Enter. False: the keyboard is elsewhere.
    bool toggle();
    /// What was handed on is kept with the visit.
    void kept();
    void setReadOnly(bool readOnly);
    /// Nothing until it was opened.
    [[nodiscard]] gauge::LivePanel* panel() const { return m_panel; }

  Q_SIGNALS:
    void taken(const hearth::ui::gauge::TakenTrace& taken);
    /// Fields came or went.
    void stopsChanged();

  private:
    void open();
    void makePanel();
    void setUp();
    void keepProfiles(const std::vector<gauge::GaugeProfile>& profiles);
    SheetContext m_context;
    QVBoxLayout* m_lines;
    shell::KeyButton* m_open;
    shell::KeyButton* m_setUp;
    gauge::LivePanel* m_panel = nullptr;
    gauge::ProfilesPanel* m_profiles = nullptr;
};

/// What the register is told of where a trace came from, and of what happened.
[[nodiscard]] reg::TraceSource traceSourceOf(const gauge::TraceOrigin& origin);
[[nodiscard]] reg::TraceMarks traceMarksOf(const std::vector<gauge::GaugeMark>& marks);

}  // namespace hearth::ui::visit
