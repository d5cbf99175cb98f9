// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/visit/part_view.h"

namespace hearth::ui::gauge {
struct TakenTrace;
}

namespace hearth::ui::shell {
class KeyButton;
class PlotView;
}  // namespace hearth::ui::shell

namespace hearth::ui::visit {

class LiveGauge;
class ReadingsTable;
class TestClock;
class LeakHuntArea;
class TraceArea;
class TraceTaker;
class WhatFirst;

/// Let-by and tightness of one test: what is tested, the timed test, readings as taken, smell, and what to do
/// first where the test went wrong.
class TightnessPart : public PartView {
    Q_OBJECT
  public:
    TightnessPart(const SheetContext& context, const PartRef& ref, QWidget* parent);

    void refill() override;
    void refresh() override;
    [[nodiscard]] input::Editor* editorFor(const FieldKey& key) const override;
    [[nodiscard]] TestClock* clock() const { return m_clock; }
    [[nodiscard]] ReadingsTable* readings() const { return m_readings; }
    [[nodiscard]] TraceArea* trace() const { return m_trace; }
    [[nodiscard]] TraceTaker* taker() const { return m_taker; }
    [[nodiscard]] LiveGauge* live() const { return m_live; }
    void setReadOnly(bool readOnly) override;
    bool toggleClock() override;
    [[nodiscard]] WhatFirst* whatFirst() const { return m_whatFirst; }

  private:
    void addWhatIsTested();
    void addReadings();
    void addTrace();
    void addLive(const QString& of);
    void keepTaken(const gauge::TakenTrace& taken);
    void addRest();
    void goToReading(reg::Item item);
    [[nodiscard]] QString subtitle() const;
    void showWhatFirst();
    void showEmergency(words::Words::Emergency emergency);
    [[nodiscard]] const judging::Judged* failing(rulebook::FindingKind kind) const;

    TestClock* m_clock = nullptr;
    ReadingsTable* m_readings = nullptr;
    WhatFirst* m_whatFirst = nullptr;
    TraceTaker* m_taker = nullptr;
    LiveGauge* m_live = nullptr;
    TraceArea* m_trace = nullptr;
    LeakHuntArea* m_hunt = nullptr;
    shell::KeyButton* m_takeFile = nullptr;
    shell::PlotView* m_plots = nullptr;
};

}  // namespace hearth::ui::visit
