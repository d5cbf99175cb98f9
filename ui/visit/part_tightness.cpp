// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/visit/part_tightness.h"

#include "ui/shell/kit.h"
#include "ui/shell/plot_view.h"
#include "ui/visit/leak_hunt_area.h"
#include "ui/visit/live_gauge.h"
#include "ui/visit/readings_table.h"
#include "ui/visit/subject_name.h"
#include "ui/visit/test_clock.h"
#include "ui/visit/trace_area.h"
#include "ui/visit/trace_taker.h"
#include "ui/visit/wanted.h"
#include "ui/visit/what_first.h"
#include "ui/words/plot_words.h"

#include <QApplication>

#include <algorithm>

namespace hearth::ui::visit {

using reg::Item;
using rulebook::FindingKind;
using rulebook::Outcome;
using words::Words;

TightnessPart::TightnessPart(const SheetContext& context, const PartRef& ref, QWidget* parent)
    : PartView(context, ref, parent) {
    addWhatIsTested();
    m_clock = new TestClock(context, ref.index, this);
    addWidget(m_clock);
    addReadings();
    m_plots = new shell::PlotView(this);
    addWidget(m_plots);
    m_whatFirst = new WhatFirst(this);
    addWidget(m_whatFirst);
    addRest();
    addTrace();
    m_hunt = new LeakHuntArea(context, this);
    addWidget(m_hunt);
    connect(m_clock, &TestClock::readingWanted, this, &TightnessPart::goToReading);
    connect(m_clock, &TestClock::said, this,
            [this](const QString& sentence) { this->context().window.navigator.say(sentence); });
    connect(m_readings, &ReadingsTable::endBegun, m_clock, &TestClock::endReadingBegun);
    m_clock->takeUp();
}

void TightnessPart::addWhatIsTested() {
    auto* fields = addFields();
    addItem(fields, Item::TestEdition, 6);
    addItem(fields, Item::TestWork, 3);
    addItem(fields, Item::TestExtent, 3);
    addItem(fields, Item::TestPartDescription, 6);
    addItem(fields, Item::TestAppliances, 6);
    addItem(fields, Item::TestIsolatedWhat, 6);
    addItem(fields, Item::TestPipesShut, 6);
    addItem(fields, Item::TestPilots, 6);
    addItem(fields, Item::TestGauge, 3);
    addItem(fields, Item::TestGaugeZeroed, 3);
}

void TightnessPart::addReadings() {
    addHeading(tr("Readings as taken"));
    m_readings = new ReadingsTable(
        context(), subject(), [this](QWidget* parent, Item item) { return makeBareItem(parent, item); },
        this);
    addWidget(m_readings);
}

void TightnessPart::addTrace() {
    addHeading(tr("What the gauge saw"));
    m_takeFile = new shell::KeyButton(tr("Take in a logger's file"), shell::ButtonKind::Quiet, this);
    m_takeFile->setObjectName(QStringLiteral("takeLoggersFile"));
    const QString of = subjectContext(context(), subject());
    m_takeFile->setAccessibleName((of.isEmpty() ? QString() : of + QStringLiteral(", ")) +
                                  m_takeFile->text());
    passByEnter(m_takeFile);
    addWidget(m_takeFile, Qt::AlignLeft);
    addLive(of);
    m_taker = new TraceTaker(context(), this);
    addWidget(m_taker);
    m_trace = new TraceArea(context(), ref().index, this);
    addWidget(m_trace);
    connect(m_takeFile, &QPushButton::clicked, m_taker, &TraceTaker::chooseFile);
    connect(m_taker, &TraceTaker::stopsChanged, this, &PartView::stopsChanged);
    connect(m_trace, &TraceArea::stopsChanged, this, &PartView::stopsChanged);
    connect(m_trace, &TraceArea::said, this,
            [this](const QString& sentence) { this->context().window.navigator.say(sentence); });
    connect(m_taker, &TraceTaker::taken, this,
            [this](const tightness::Trace& trace, const reg::TraceSource& source) {
                m_trace->setTrace(trace, source);
                if (const auto kept = m_trace->keep(); !kept) {
                    this->context().window.dialogs.tell(this, tr("The trace was not kept"),
                                                        words().error(kept.error()));
                }
            });
    setReadOnly(model().isReadOnly());
}

void TightnessPart::addLive(const QString& of) {
    m_live = new LiveGauge(context(), of, this);
    addWidget(m_live);
    connect(m_live, &LiveGauge::stopsChanged, this, &PartView::stopsChanged);
    connect(m_live, &LiveGauge::taken, this, &TightnessPart::keepTaken);
}

void TightnessPart::keepTaken(const gauge::TakenTrace& taken) {
    std::optional<judging::SecondGauge> second;
    if (!taken.beside.empty()) {
        const auto& beside = taken.beside.front();
        second = judging::SecondGauge{traceSourceOf(beside.origin), beside.trace};
    }
    m_trace->setTrace(taken.trace, traceSourceOf(taken.origin), std::move(second));
    auto kept = m_trace->keep();
    // What was marked while it was watched counts before what can be guessed from the curve.
    const auto marks = traceMarksOf(taken.marks);
    const auto* trace = model().file().traceOf(reg::TestId{subject().id});
    if (kept && !marks.empty() && trace != nullptr) {
        kept = model().markTrace(trace->id, marks);
    }
    if (!kept) {
        context().window.dialogs.tell(this, tr("The trace was not kept"), words().error(kept.error()));
        return;
    }
    m_live->kept();
}

bool TightnessPart::toggleClock() {
    return m_live->toggle();
}

void TightnessPart::setReadOnly(bool readOnly) {
    PartView::setReadOnly(readOnly);
    m_takeFile->setEnabled(!readOnly);
    m_trace->setReadOnly(readOnly);
    m_live->setReadOnly(readOnly);
}

void TightnessPart::addRest() {
    auto* fields = addFields();
    addItem(fields, Item::TestSmell, 6);
    addItem(fields, Item::LowPressureReason, 6);
    addItem(fields, Item::SecondDisplayStart, 2);
    addItem(fields, Item::SecondDisplayEnd, 2);
    addItem(fields, Item::AssumedTemperatureChange, 2);
    addItem(fields, Item::TestVolumeOff, 2);
}

void TightnessPart::goToReading(Item item) {
    // A field somewhere else that is being filled in is not taken away from under the hands.
    const QWidget* focus = QApplication::focusWidget();
    const bool elsewhere = focus != nullptr && window()->isAncestorOf(focus) &&
                           !m_clock->isAncestorOf(focus) && !m_readings->isAncestorOf(focus) &&
                           m_clock->isDue();
    if (elsewhere) {
        return;
    }
    if (const SheetField* field = find({item, std::nullopt, subject()})) {
        shell::focusOn(field->editor());
    }
}

QString TightnessPart::subtitle() const {
    const reg::VisitFile& file = model().file();
    const reg::Test& test = file.tests[ref().index];
    const auto chosen = [&](Item item) {
        const auto code = file.choiceOf(subject(), item);
        return code.empty() ? QString() : words().choice(item, std::string(code)).remove(u'&');
    };
    const auto edition = editionOf(file, test);
    QStringList parts{
        edition == rulebook::Edition::General ? tr("edition to choose") : words().edition(edition),
        chosen(Item::TestWork), chosen(Item::TestExtent), chosen(Item::TestAppliances),
        words().gas(file.installation.gas)};
    parts.removeAll(QString());
    return parts.join(QStringLiteral(" \u00B7 "));
}

const judging::Judged* TightnessPart::failing(FindingKind kind) const {
    const judging::Judged* judged = finding(kind);
    return judged != nullptr && judged->finding.outcome == Outcome::Fail ? judged : nullptr;
}

void TightnessPart::showEmergency(Words::Emergency emergency) {
    const reg::VisitFile& file = model().file();
    if (m_whatFirst->setSteps(words().emergencyTitle(emergency),
                              words().emergencySteps(emergency, file.installation.gas, file.premises.country,
                                                     file.emergencyContacts))) {
        Q_EMIT urgent(m_whatFirst);
    }
}

void TightnessPart::showWhatFirst() {
    if (model().file().choiceOf(subject(), Item::TestSmell) == reg::choice::kYes) {
        showEmergency(Words::Emergency::SmellOrEscape);
        return;
    }
    if (const judging::Judged* letBy = failing(FindingKind::LetBy)) {
        QStringList steps{words().sentence(letBy->finding.why)};
        for (const rulebook::Sentence& note : letBy->finding.notes) {
            steps << words().sentence(note);
        }
        if (m_whatFirst->setSteps(tr("Stop: the valve lets by"), steps)) {
            Q_EMIT urgent(m_whatFirst);
        }
        return;
    }
    if (failing(FindingKind::Tightness) != nullptr || failing(FindingKind::IsolatedRetest) != nullptr) {
        showEmergency(Words::Emergency::FailedTest);
        return;
    }
    m_whatFirst->setSteps({}, {});
}

void TightnessPart::refill() {
    PartView::refill();
    m_clock->takeUp();
}

void TightnessPart::refresh() {
    PartView::refresh();
    setSubtitle(subtitle());
    m_readings->refresh(isRetestWanted(subject(), model().file(), model().findings()));
    m_clock->refresh();
    m_plots->show(words::testPlots({model().file(), model().findings(), words()}, {subject().id}));
    m_trace->refresh();
    m_hunt->refresh();
    showWhatFirst();
}

input::Editor* TightnessPart::editorFor(const FieldKey& key) const {
    // The gauge's own particulars stand with the firm's instruments; the way there is to choose the gauge.
    if (key.field == record::Field::InstrumentSerial || key.field == record::Field::InstrumentCalibration) {
        return PartView::editorFor({Item::TestGauge, std::nullopt, subject()});
    }
    return PartView::editorFor(key);
}

}  // namespace hearth::ui::visit
