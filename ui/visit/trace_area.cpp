// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/visit/trace_area.h"

#include "core/quantity/units.h"
#include "core/store/record_traces.h"
#include "ui/shell/flow_layout.h"
#include "ui/shell/kit.h"
#include "ui/shell/line_list.h"
#include "ui/shell/plot_view.h"
#include "ui/visit/part_view.h"
#include "ui/visit/stage_timer.h"
#include "ui/visit/subject_name.h"
#include "ui/words/trace_words.h"

#include <algorithm>
#include <array>

namespace hearth::ui::visit {

using quantity::Decimal;
using reg::TraceEvent;
using words::qstring;

namespace {

constexpr std::array kTraceEvents{TraceEvent::ValveShut, TraceEvent::PumpRemoved, TraceEvent::DoorOpened,
                                  TraceEvent::LetBy,     TraceEvent::Settling,    TraceEvent::Timing,
                                  TraceEvent::TestEnd};
const QString kReplaced = QStringLiteral("replaced");
const QString kKept = QStringLiteral("kept");

std::optional<TraceEvent> traceEventIn(const QString& code) {
    return reg::traceEventFromCode(code.toStdString());
}

}  // namespace

TraceArea::TraceArea(const SheetContext& context, std::size_t test, QWidget* parent)
    : QWidget(parent), m_context(context), m_test(test), m_lines(new QVBoxLayout(this)) {
    m_lines->setContentsMargins(0, 0, 0, 0);
    m_body = new QWidget(this);
    m_lines->addWidget(m_body);
    auto* lines = new QVBoxLayout(m_body);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->setSpacing(look::kGap / 2);
    addText();
    addProposals();
    addMarks();
    addChoiceOfOld();
    m_refused = shell::namedText("traceRefused", look::TypeRole::Body, look::Role::Fail, this);
    m_refused->hide();
    m_lines->addWidget(m_refused);
    constexpr int kOnceASecond = 1000;
    m_telling.setSingleShot(true);
    m_telling.setInterval(kOnceASecond);
    connect(&m_telling, &QTimer::timeout, this, [this] {
        tell();
        showAll();
    });
    setReadOnly(m_context.model.isReadOnly());
    showAll();
}

void TraceArea::addText() {
    const auto line = [this](look::TypeRole type, look::Role ink, const char* name) {
        auto* made = shell::namedText(name, type, ink, m_body);
        m_body->layout()->addWidget(made);
        return made;
    };
    m_source = line(look::TypeRole::Small, look::Role::SoftInk, "traceSource");
    m_used = line(look::TypeRole::Small, look::Role::SoftInk, "traceUsed");
    m_plots = new shell::PlotView(m_body);
    m_plots->setObjectName(QStringLiteral("tracePlots"));
    m_body->layout()->addWidget(m_plots);
    m_meaning = line(look::TypeRole::Body, look::Role::Ink, "traceMeaning");
    m_meaning->setFont(shell::strongFont());
    m_grounds = line(look::TypeRole::Body, look::Role::Ink, "traceGrounds");
    m_beside = line(look::TypeRole::Small, look::Role::SoftInk, "traceBesideVerdict");
    m_beside->setText(words::traceBesideVerdict(m_context.window.words));
}

/// What becomes of the trace that is there when a newer one comes; only while no record shows it.
void TraceArea::addChoiceOfOld() {
    auto* fields = new shell::Fields(2, m_body);
    m_older = input::makeListEditor(fields, {{kReplaced, tr("It takes the place of this one")},
                                             {kKept, tr("This one is kept beside it")}});
    m_older->setObjectName(QStringLiteral("traceOlder"));
    const QString context = subjectContext(m_context, reg::subject(test().id));
    m_older->setLabel(tr("When a newer trace comes"),
                      context.isEmpty() ? tr("trace") : context + QStringLiteral(", ") + tr("trace"));
    m_older->setText(kReplaced);
    m_older->hide();
    fields->add(m_older);
    m_body->layout()->addWidget(fields);
}

/// A button for each reading that a test has; Space confirms it, and Enter goes past: nothing is entered by
/// going down the sheet.
void TraceArea::addProposals() {
    m_proposed = new QWidget(m_body);
    m_body->layout()->addWidget(m_proposed);
    auto* lines = new QVBoxLayout(m_proposed);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->setSpacing(look::kGap / 2);
    lines->addWidget(shell::softText(
        tr("Readings that the trace has where the stages begin and end. Space enters the one you stand on."),
        m_proposed));
    auto* flow = new shell::FlowLayout(nullptr, look::kGap);
    lines->addLayout(flow);
    constexpr std::size_t kMostProposals = 6;
    for (std::size_t i = 0; i < kMostProposals; ++i) {
        auto* button = new shell::KeyButton({}, shell::ButtonKind::Plain, m_proposed);
        button->setObjectName(QStringLiteral("confirmReading%1").arg(i));
        passByEnter(button);
        connect(button, &QPushButton::clicked, this, [this, i] {
            if (i < m_proposals.size()) {
                confirm(m_proposals[i]);
            }
        });
        flow->addWidget(button);
        m_confirm.push_back(button);
    }
}

void TraceArea::addMarks() {
    const QString context = subjectContext(m_context, reg::subject(test().id));
    const auto named = [&](const QString& name) {
        return context.isEmpty() ? name : context + QStringLiteral(", ") + name;
    };
    m_marks = new shell::LineList(named(tr("What happened when")), tr("Nothing is marked yet."), m_body);
    m_marks->setObjectName(QStringLiteral("traceMarks"));
    m_marks->setGrowing(true);
    m_body->layout()->addWidget(m_marks);
    auto* grid = new shell::Fields(6, m_body);
    m_body->layout()->addWidget(grid);
    std::vector<input::ChoiceItem> events;
    for (const TraceEvent event : kTraceEvents) {
        events.push_back(
            {shell::coded(reg::codeOf(event)), words::traceEvent(event, m_context.window.words)});
    }
    m_event = input::makeListEditor(m_body, events);
    m_event->setObjectName(QStringLiteral("traceEvent"));
    m_event->setLabel(tr("What happened"), named(tr("trace")));
    grid->add(m_event, 3);
    m_at = input::makeQuantityEditor(m_body, quantity::UnitFamily::Time);
    m_at->setObjectName(QStringLiteral("traceEventAt"));
    m_at->setLabel(tr("After the trace began"), named(tr("trace")));
    m_at->setUnit(quantity::UnitCode::Second);
    grid->add(m_at, 3);
    auto* buttons = new shell::FlowLayout(nullptr, look::kGap);
    const auto button = [&](const QString& text, const char* name, void (TraceArea::*pressed)()) {
        auto* made = new shell::KeyButton(text, shell::ButtonKind::Quiet, m_body);
        made->setObjectName(QString::fromLatin1(name));
        made->setAccessibleName(named(text));
        passByEnter(made);
        if (pressed != nullptr) {
            connect(made, &QPushButton::clicked, this, pressed);
        }
        buttons->addWidget(made);
        return made;
    };
    m_addMark = button(tr("Mark it"), "addTraceMark", &TraceArea::addMark);
    m_removeMark = button(tr("Take the mark away"), "removeTraceMark", &TraceArea::removeMark);
    m_keep = button(tr("Keep this trace"), "keepTrace", nullptr);
    m_remove = button(tr("Take the trace away"), "removeTrace", &TraceArea::removeTrace);
    connect(m_keep, &QPushButton::clicked, this, [this] { say(keep()); });
    static_cast<QVBoxLayout*>(m_body->layout())->addLayout(buttons);
}

const reg::Test& TraceArea::test() const {
    return m_context.model.file().tests[m_test];
}

/// That the test goes by.
const reg::GaugeTrace* TraceArea::kept() const {
    return m_context.model.file().traceOf(test().id);
}

/// Which of the test's traces is used, and what becomes of it when a newer one comes.
void TraceArea::showUsed() {
    auto& model = m_context.model;
    const auto* used = kept();
    const auto recordOf = [&](const reg::GaugeTrace& trace) {
        return qstring(model.store().recordOfTrace(trace.id).value_or(std::string()));
    };
    const auto named = [&](const reg::GaugeTrace& trace) {
        return tr("%1, kept at %2").arg(qstring(trace.source.name), qstring(wallTimeText(trace.keptAt)));
    };
    const QString record = used == nullptr ? QString() : recordOf(*used);
    QStringList others;
    for (const auto& trace : model.file().traces) {
        if (trace.test == test().id && !trace.beside && &trace != used) {
            const QString in = recordOf(trace);
            others << (in.isEmpty() ? named(trace) : tr("%1 (in record %2)").arg(named(trace), in));
        }
    }
    QStringList sentences;
    if (!others.isEmpty() && !m_isUnkept) {
        sentences << tr("The newest trace of this test is used: %1. Kept and not used: %2.")
                         .arg(named(*used), others.join(QStringLiteral("; ")));
    }
    if (!record.isEmpty()) {
        sentences
            << (m_isUnkept
                    ? tr("Record %1 shows the trace that was kept before; that one stays as it is, and "
                         "this one comes beside it.")
                          .arg(record)
                    : tr("Record %1 shows it, so it stays as it is: a newer one comes beside it, and is "
                         "used then.")
                          .arg(record));
    }
    m_used->setText(sentences.join(QLatin1Char(' ')));
    m_used->setVisible(!sentences.isEmpty());
    const bool mayBeReplaced = used != nullptr && record.isEmpty() && !model.isReadOnly();
    if (m_older->isHidden() == mayBeReplaced) {
        m_older->setVisible(mayBeReplaced);
        Q_EMIT stopsChanged();
    }
}

void TraceArea::setTrace(const tightness::Trace& trace, const reg::TraceSource& source,
                         std::optional<judging::SecondGauge> second) {
    const auto& model = m_context.model;
    const bool isMore = m_isUnkept && m_seen && m_seen->given.source == source;
    judging::TraceGiven given{source, isMore ? m_seen->given.marks : reg::TraceMarks(), trace,
                              std::move(second)};
    if (given.marks.empty()) {
        given.marks = judging::guessedMarks(model.file(), model.book(), test().id, trace);
    }
    auto told = isMore ? m_seen->told : tightness::TraceTold();
    m_isUnkept = true;
    m_shown.reset();
    m_seen = judging::stagedTrace(model.file(), model.book(), test().id, std::move(given));
    m_seen->told = std::move(told);
    if (!isMore) {
        tell();
    } else if (!m_telling.isActive()) {
        m_telling.start();
    }
    showAll();
}

Result<void> TraceArea::keep() {
    if (!m_isUnkept || !m_seen) {
        return {};
    }
    const auto& given = m_seen->given;
    store::NewTrace trace{test().id, given.source, given.marks, given.trace};
    if (const auto& second = given.second) {
        trace.beside = store::NewTraceBeside{second->source, second->trace};
    }
    if (const auto* before = kept(); before != nullptr && m_older->text() != kKept) {
        trace.replaces = before->id;
    }
    m_isUnkept = false;  // keeping judges again, which shows what is kept
    auto done = m_context.model.keepTrace(trace);
    if (!done && done.error().code == ErrorCode::TraceInRecord) {
        trace.replaces.reset();  // what a record shows stays, and this one stands beside it
        done = m_context.model.keepTrace(trace);
    }
    m_isUnkept = !done;
    showAll();
    return done ? Result<void>() : tl::unexpected(done.error());
}

/// Reads what is kept, where that is not shown already.
void TraceArea::takeUpKept() {
    const auto* trace = kept();
    if (trace == nullptr) {
        m_shown.reset();
        m_seen.reset();
        return;
    }
    const auto marks = reg::marksFromText(trace->marks).value_or(reg::TraceMarks());
    if (m_shown == trace->id && m_seen) {
        m_seen->given.marks = marks;
        return;
    }
    auto readings = m_context.model.store().traceReadings(trace->id);
    m_shown = trace->id;
    m_seen.reset();
    if (!readings) {
        say(tl::unexpected(readings.error()));
        return;
    }
    judging::TraceSeen seen;
    seen.given = {trace->source, marks, std::move(*readings)};
    auto second = store::secondGaugeOf(m_context.model.store(), m_context.model.file(), trace->id);
    if (second) {
        seen.given.second = std::move(*second);
    } else {
        say(tl::unexpected(second.error()));  // the first is shown all the same
    }
    m_seen = std::move(seen);
    m_isTold = false;
}

void TraceArea::tell() {
    if (!m_seen) {
        return;
    }
    const auto& model = m_context.model;
    m_seen = judging::seenTrace(model.file(), model.book(), test().id, std::move(m_seen->given));
    m_isTold = true;
}

void TraceArea::refresh() {
    if (!m_isUnkept) {
        takeUpKept();
    }
    if (m_seen) {
        const auto& model = m_context.model;
        auto staged = judging::stagedTrace(model.file(), model.book(), test().id, m_seen->given);
        if (!m_isTold || staged.stages != m_seen->stages || !(staged.asked == m_seen->asked)) {
            tell();
        }
    }
    showAll();
}

QString TraceArea::meaning() const {
    return m_meaning->text();
}

void TraceArea::showAll() {
    const bool isShown = m_seen.has_value();
    const auto& words = m_context.window.words;
    if (m_body->isHidden() == isShown) {
        m_body->setVisible(isShown);
        Q_EMIT stopsChanged();
    }
    if (!isShown) {
        return;
    }
    m_source->setText(words::traceSource(*m_seen, words));
    showUsed();
    m_source->setInk(m_seen->given.source.isSimulated ? look::Role::Fail : look::Role::SoftInk);
    m_meaning->setText(words::traceMeaning(*m_seen, words));
    QStringList grounds = words::traceGrounds(*m_seen, words);
    const auto* off = m_context.model.file().find(reg::subject(test().id), reg::Item::TestVolumeOff);
    if (off != nullptr && !off->text.empty() && !m_seen->asked.volumeOff) {
        grounds << tr(
            "How far the volume may be off is a part of it, from nought to below a hundred percent: what "
            "is typed for it is none, and counts for nothing.");
    }
    m_grounds->setText(grounds.join(QLatin1Char(' ')));
    m_grounds->setVisible(!grounds.isEmpty());
    auto plots = words::tracePlots({m_context.model.file(), m_context.model.findings(), words}, *m_seen);
    plots.title.clear();  // they stand below their heading
    plots.note.clear();   // and the sentence below them
    m_plots->show(plots);
    m_keep->setVisible(m_isUnkept);
    m_remove->setVisible(!m_isUnkept);
    showProposals();
    showMarks();
}

void TraceArea::showProposals() {
    m_proposals = judging::proposalsOf(*m_seen);
    m_proposed->setVisible(!m_proposals.empty());
    const auto& words = m_context.window.words;
    const auto on = reg::subject(test().id);
    const QString context = subjectContext(m_context, on);
    for (std::size_t i = 0; i < m_confirm.size(); ++i) {
        auto* button = m_confirm[i];
        button->setVisible(i < m_proposals.size());
        if (i >= m_proposals.size()) {
            continue;
        }
        const auto& one = m_proposals[i];
        const auto* entry = m_context.model.file().find(on, one.item);
        const bool isEntered =
            entry != nullptr && entry->text == one.reading.text && entry->unit == one.reading.unit;
        const QString reading = tr("%1: %2").arg(
            words.item(one.item),
            qstring(one.reading.text + "\u00A0" + std::string(quantity::unitText(one.reading.unit))));
        const QString text = isEntered ? tr("%1, entered").arg(reading)
                             : entry != nullptr && !entry->text.empty()
                                 ? tr("%1, in place of %2").arg(reading, qstring(entry->text))
                                 : reading;
        button->setWords(text);
        button->setAccessibleName((context.isEmpty() ? QString() : context + QStringLiteral(", ")) +
                                  tr("Enter from the trace: %1").arg(text));
        button->setEnabled(!isEntered && !m_context.model.isReadOnly());
    }
}

void TraceArea::showMarks() {
    const auto& words = m_context.window.words;
    std::vector<shell::Line> lines;
    for (const auto& mark : m_seen->given.marks) {
        lines.push_back(
            {QStringLiteral("%1@%2").arg(shell::coded(reg::codeOf(mark.event))).arg(mark.milliseconds),
             words::traceEvent(mark.event, words),
             {},
             words.figure({Decimal(mark.milliseconds / 100, 1), quantity::UnitCode::Second})});
    }
    m_marks->setLines(std::move(lines));
    m_removeMark->setEnabled(!m_seen->given.marks.empty() && !m_context.model.isReadOnly());
}

// NOLINTNEXTLINE(performance-unnecessary-value-param): see the header.
void TraceArea::confirm(judging::TraceProposal proposal) {
    const auto on = reg::subject(test().id);
    auto& model = m_context.model;
    const auto entered =
        model.enter(on, proposal.item, qstring(proposal.reading.text), proposal.reading.unit);
    if (!entered) {
        say(entered);
        return;
    }
    if (proposal.at && model.file().find(on, proposal.timeItem) == nullptr) {
        say(model.enter(on, proposal.timeItem, qstring(timeOfDay(*proposal.at))));
    }
    Q_EMIT confirmed(proposal.item);
    Q_EMIT said(tr("%1 entered from the trace.").arg(m_context.window.words.item(proposal.item)));
    const auto next = std::find_if(m_confirm.begin(), m_confirm.end(), [](const shell::KeyButton* button) {
        return button->isVisible() && button->isEnabled();
    });
    if (next != m_confirm.end()) {
        (*next)->setFocus(Qt::OtherFocusReason);
    }
}

void TraceArea::changeMarks(const reg::TraceMarks& marks) {
    if (m_isUnkept) {
        m_seen->given.marks = marks;
        tell();
        showAll();
    } else if (m_shown) {
        say(m_context.model.markTrace(*m_shown, marks));
    }
}

void TraceArea::addMark() {
    const auto event = traceEventIn(m_event->text());
    const auto time = shell::typedIn(m_at);
    const auto value = time.value();
    const bool isTime = value && value->toDouble() >= 0.0;
    m_event->setProblem(event ? QString() : tr("Choose what happened."));
    m_at->setProblem(isTime ? QString() : tr("Type a time, from nought on."));
    if (!event || !isTime || !m_seen) {
        return;
    }
    const quantity::Duration at(value->toDouble(), quantity::timeUnit(time.unit));
    const auto& trace = m_seen->given.trace;
    if (trace.empty() || at > trace.back().at) {
        m_at->setProblem(tr("The trace ends before that."));
        return;
    }
    const auto milliseconds = Decimal::rounded(at.in(quantity::kSecond)*1000.0, 0).mantissa();
    changeMarks(reg::withMark(m_seen->given.marks, {*event, static_cast<int>(milliseconds)}));
    m_at->setText({});
}

void TraceArea::removeMark() {
    const int row = m_marks->currentRow();
    if (!m_seen || row < 0 || row >= static_cast<int>(m_seen->given.marks.size())) {
        return;
    }
    auto marks = m_seen->given.marks;
    marks.erase(marks.begin() + row);
    changeMarks(marks);
}

void TraceArea::removeTrace() {
    if (m_shown) {
        const auto done = m_context.model.removeTrace(*m_shown);
        say(done);
        if (done) {
            Q_EMIT said(tr("The trace was taken away. Ctrl+Z brings it back."));
        }
    }
}

void TraceArea::say(const Result<void>& done) {
    m_refused->setText(done ? QString() : m_context.window.words.error(done.error()));
    m_refused->setVisible(!done);
}

void TraceArea::setReadOnly(bool readOnly) {
    for (QWidget* one : std::initializer_list<QWidget*>{m_addMark, m_removeMark, m_keep, m_remove}) {
        one->setEnabled(!readOnly);
    }
    m_older->setReadOnly(readOnly);
    m_event->setReadOnly(readOnly);
    m_at->setReadOnly(readOnly);
}

}  // namespace hearth::ui::visit
