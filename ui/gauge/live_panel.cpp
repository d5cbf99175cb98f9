// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/gauge/live_panel.h"

#include "ui/gauge/gauge_words.h"
#include "ui/gauge/left_recordings.h"
#include "ui/gauge/live_figure.h"
#include "ui/gauge/live_plot.h"
#include "ui/gauge/simulated_band.h"
#include "ui/shell/flow_layout.h"
#include "ui/shell/kit.h"
#include "ui/shell/plot_view.h"

#include <cmath>

namespace hearth::ui::gauge {

namespace {

using quantity::Decimal;
using quantity::kMillibar;
using quantity::PressureChange;
using quantity::UnitCode;
using std::chrono::milliseconds;

constexpr milliseconds kPanelBeat{100};
constexpr int kBeatsToAPlot = 5;
constexpr milliseconds kZeroSeen{5000};
constexpr milliseconds kComparedOver{10000};

/// One decimal more than the display has: what is shown is a mean.
int decimalsFor(PressureChange step) {
    constexpr int kMostShown = 4;
    const double digits = -std::floor(std::log10(std::max(step.in(kMillibar), 1e-6)) + 1e-9);
    return std::clamp(static_cast<int>(digits) + 1, 1, kMostShown);
}

QString countText(quint64 count) {
    return QString::number(count);
}

}  // namespace

LivePanel::LivePanel(std::vector<GaugeProfile> profiles, const QString& folder, const Clock& clock,
                     const words::Words& words, QWidget* parent)
    : QWidget(parent),
      m_profiles(std::move(profiles)),
      m_folder(folder),
      m_clock(clock),
      m_words(words),
      m_first(clock),
      m_second(clock) {
    setObjectName(QStringLiteral("livePanel"));
    setAccessibleName(tr("Live gauge"));
    for (auto& practice : GaugeWords::practiceProfiles()) {
        m_profiles.push_back(std::move(practice));
    }
    auto* lines = new QVBoxLayout(this);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->setSpacing(look::kGap);
    lines->addWidget(shell::headingText(tr("Live gauge"), this));
    addChoices(lines);
    addFigures(lines);
    addButtons(lines);
    m_plot = new shell::PlotView(this);
    lines->addWidget(m_plot);
    m_left = new LeftRecordings(words, this);
    lines->addWidget(m_left);
    connect(m_left, &LeftRecordings::wanted, this, &LivePanel::traceTaken);
    connect(&m_first, &Watch::changed, this, &LivePanel::showState);
    connect(&m_second, &Watch::changed, this, &LivePanel::showState);
    connect(&m_ticks, &QTimer::timeout, this, &LivePanel::tick);
    m_ticks.start(kPanelBeat);
    m_left->look(m_folder);
    tick();
}

LivePanel::~LivePanel() {
    // What goes on ends as it would by a key; its journal stays, and is offered the next time.
    m_first.end();
    m_second.end();
}

void LivePanel::addChoices(QVBoxLayout* lines) {
    std::vector<input::ChoiceItem> choices;
    for (std::size_t i = 0; i < m_profiles.size(); ++i) {
        choices.push_back({QString::number(i), QString::fromStdString(m_profiles[i].name)});
    }
    auto* fields = new shell::Fields(1, this);  // the practice pipes' names are long
    m_gauge = input::makeListEditor(fields, choices);
    m_gauge->setLabel(tr("Gauge"), tr("Live gauge"));
    m_gauge->setObjectName(QStringLiteral("gaugeChoice"));
    m_other = input::makeListEditor(fields, choices);
    m_other->setLabel(tr("Second gauge, to compare"), tr("Live gauge"));
    m_other->setObjectName(QStringLiteral("otherGaugeChoice"));
    fields->add(m_gauge);
    fields->add(m_other);
    lines->addWidget(fields);
    const auto chosen = [](const QString& code) { return code.isEmpty() ? -1 : code.toInt(); };
    connect(m_gauge, &input::Editor::committed, this,
            [this, chosen](const QString& code) { choose(chosen(code)); });
    connect(m_other, &input::Editor::committed, this,
            [this, chosen](const QString& code) { compareWith(chosen(code)); });

    m_simulated = makeSimulatedBand(this);
    lines->addWidget(m_simulated);
}

void LivePanel::addFigures(QVBoxLayout* lines) {
    auto* figures = new shell::FlowLayout(nullptr, 3 * look::kGap);
    m_figure = new LiveFigure(this);
    m_figure->setObjectName(QStringLiteral("liveFigure"));
    m_otherFigure = new LiveFigure(this);
    m_otherFigure->setObjectName(QStringLiteral("otherLiveFigure"));
    m_otherFigure->hide();
    figures->addWidget(m_figure);
    figures->addWidget(m_otherFigure);
    lines->addLayout(figures);
    const auto sentence = [&](shell::Text*& text, const char* name) {
        text = shell::bodyText({}, this);
        text->setObjectName(QLatin1String(name));
        text->hide();
        lines->addWidget(text);
    };
    sentence(m_state, "gaugeState");
    sentence(m_zero, "zeroCheck");
    sentence(m_compared, "gaugesCompared");
    sentence(m_counts, "recordingCounts");
}

void LivePanel::addButtons(QVBoxLayout* lines) {
    auto* buttons = new shell::FlowLayout(nullptr, look::kGap);
    m_record = new shell::KeyButton(tr("Record"), shell::ButtonKind::Primary, this);
    m_record->showKey(QKeySequence(Qt::CTRL | Qt::Key_Return).toString(QKeySequence::NativeText));
    m_record->setObjectName(QStringLiteral("recordButton"));
    connect(m_record, &QPushButton::clicked, this, &LivePanel::toggle);
    buttons->addWidget(m_record);
    m_zeroButton = new shell::KeyButton(tr("Zero check"), QKeySequence(Qt::ALT | Qt::Key_0),
                                        shell::ButtonKind::Plain, this);
    m_zeroButton->setObjectName(QStringLiteral("zeroButton"));
    m_zeroButton->setAccessibleDescription(tr("The gauge is open to the air and not connected."));
    connect(m_zeroButton, &QPushButton::clicked, this, &LivePanel::checkZero);
    buttons->addWidget(m_zeroButton);
    int key = Qt::Key_1;
    for (const auto event : kGaugeEvents) {
        auto* mark = new shell::KeyButton(GaugeWords::event(event), QKeySequence(Qt::ALT | Qt::Key(key++)),
                                          shell::ButtonKind::Quiet, this);
        mark->setObjectName(QStringLiteral("mark_") + QLatin1String(codeOf(event).data()));
        connect(mark, &QPushButton::clicked, this, [this, event] {
            m_first.recorder().mark(event);
            showPlot();
        });
        buttons->addWidget(mark);
        m_marks.push_back(mark);
    }
    lines->addLayout(buttons);
}

void LivePanel::begin(Watch& watch, int profile) {
    if (profile < 0 || profile >= static_cast<int>(m_profiles.size())) {
        watch.end();
        return;
    }
    auto* editor = &watch == &m_first ? m_gauge : m_other;
    const auto begun = watch.begin(m_profiles[static_cast<std::size_t>(profile)]);
    editor->setText(QString::number(profile));
    editor->setProblem(begun ? QString() : GaugeWords::refusal(begun.error()));
}

void LivePanel::choose(int profile) {
    if (m_first.recorder().isRecording()) {
        toggle();  // what was recorded of the other gauge is not lost
    }
    m_zero->hide();
    begin(m_first, profile);
    tick();
}

void LivePanel::compareWith(int profile) {
    if (m_first.recorder().isRecording() && !m_second.recorder().taken().isEmpty()) {
        toggle();
    }
    m_zero->hide();
    begin(m_second, profile);
    if (m_first.recorder().isRecording() && m_second.source() != nullptr) {
        m_second.recorder().beginBeside(m_first.recorder(), m_second.origin(), m_folder);
    }
    tick();
}

void LivePanel::takeFocus() {
    m_gauge->focusTarget()->setFocus(Qt::OtherFocusReason);
}

void LivePanel::keyPressEvent(QKeyEvent* event) {
    if (shell::isEnter(*event) && event->modifiers().testFlag(Qt::ControlModifier)) {
        toggle();
        return;
    }
    QWidget::keyPressEvent(event);
}

void LivePanel::toggle() {
    if (m_first.recorder().isRecording()) {
        endRecording();
    } else if (m_first.source() != nullptr) {
        beginRecording();
    }
    m_tickCount = 0;  // what was recorded is seen at once, not some beats later
    tick();
}

void LivePanel::beginRecording() {
    m_first.recorder().begin(m_first.origin(), m_folder);
    m_second.recorder().forget();
    if (m_second.source() != nullptr) {
        m_second.recorder().beginBeside(m_first.recorder(), m_second.origin(), m_folder);
    }
    Q_EMIT recordingChanged(true);
}

void LivePanel::endRecording() {
    m_first.recorder().end();
    m_second.recorder().end();
    Q_EMIT recordingChanged(false);
    auto taken = m_first.recorder().taken();
    const auto& second = m_second.recorder().taken();
    if (taken.trace.empty()) {
        taken = second;  // the first said nothing all the time
    } else if (!second.trace.empty()) {
        taken.beside.push_back(second);
    }
    if (taken.trace.empty()) {
        discardJournals();
    } else {
        Q_EMIT traceTaken(taken);
    }
}

void LivePanel::discardJournals() {
    m_first.recorder().discardJournal();
    m_second.recorder().discardJournal();
}

void LivePanel::traceKept() {
    if (!m_first.recorder().isRecording()) {
        discardJournals();
    }
    m_left->taken();
}

QString LivePanel::pressureText(PressureChange pressure, PressureChange step) const {
    return m_words.figure({Decimal::rounded(pressure.in(kMillibar), decimalsFor(step)), UnitCode::Millibar});
}

std::optional<tightness::ZeroCheck> LivePanel::lookAtZero(Watch& watch) {
    const auto step = watch.step();
    const auto check = step ? tightness::zeroCheck(watch.recent(kZeroSeen), *step) : std::nullopt;
    if (check) {
        const auto typed = [](PressureChange pressure, int decimals) {
            return quantity::Typed{Decimal::rounded(pressure.in(kMillibar), decimals).text(),
                                   UnitCode::Millibar};
        };
        watch.setZero({typed(check->reads, decimalsFor(*step)), typed(*step, decimalsFor(*step * 10.0)),
                       m_clock.now(), check->isZero});
    }
    return check;
}

QString LivePanel::zeroText(const Watch& watch, const std::optional<tightness::ZeroCheck>& check) const {
    if (!check) {
        return tr("Zero check: no reading in the last five seconds.");
    }
    const auto step = *watch.step();
    const QString reads = pressureText(check->reads, step);
    const QString steps = pressureText(step, step * 10.0);
    return check->isZero
               ? tr("Zero check: open to the air it reads %1, which is nought within its step of %2.")
                     .arg(reads, steps)
               : tr("Zero check: open to the air it reads %1, which is not nought within its step of "
                    "%2. Zero the "
                    "gauge before it is connected.")
                     .arg(reads, steps);
}

/// Of both, since both are open to the air before they are connected.
void LivePanel::checkZero() {
    const auto first = lookAtZero(m_first);
    QString text = zeroText(m_first, first);
    bool isWrong = first && !first->isZero;
    if (m_second.source() != nullptr) {
        const auto second = lookAtZero(m_second);
        text = tr("%1: %2 %3: %4")
                   .arg(QString::fromStdString(m_first.profile().name), text,
                        QString::fromStdString(m_second.profile().name), zeroText(m_second, second));
        isWrong = isWrong || (second && !second->isZero);
    }
    m_zero->setInk(isWrong ? look::Role::LookAgain : first ? look::Role::Ink : look::Role::NoVerdict);
    m_zero->setText(text);
    m_zero->setVisible(true);
}

void LivePanel::showFigure(LiveFigure* shown, const Watch& watch) const {
    LiveFigure::Shown now;
    now.name = QString::fromStdString(watch.profile().name);
    if (const auto& last = watch.last()) {
        now.figure = m_words.figure({last->line.value, UnitCode::None});
        now.unit = m_words.unit(last->line.unit);
        now.age = GaugeWords::age(*watch.age());
        now.isStale = watch.isStale();
    }
    shown->show(now);
}

void LivePanel::showState() {
    QStringList sentences;
    bool isSimulated = false;
    for (const auto* watch : {&m_first, &m_second}) {
        if (watch->source() != nullptr) {
            sentences << GaugeWords::state(*watch->source(), watch->profile());
            isSimulated = isSimulated || watch->source()->isSimulated();
            if (watch->refused()) {
                sentences << tr("A line gave no reading: “%1”: %2.")
                                 .arg(GaugeWords::line(watch->refused()->line),
                                      GaugeWords::refusal(watch->refused()->why));
            }
        }
    }
    m_state->setText(sentences.isEmpty() ? tr("Choose a gauge to watch.") : sentences.join(u' '));
    m_state->setVisible(true);
    m_simulated->setVisible(isSimulated);
}

void LivePanel::showCompared() {
    m_otherFigure->setVisible(m_second.source() != nullptr);
    const auto first = m_first.step();
    const auto second = m_second.step();
    const auto compared = first && second ? tightness::compareGauges(m_first.recent(kComparedOver), *first,
                                                                     m_second.recent(kComparedOver), *second)
                                          : std::nullopt;
    m_compared->setVisible(compared.has_value());
    if (!compared) {
        return;
    }
    const QString difference = pressureText(compared->difference, *second);
    const QString allowed = pressureText(compared->allowed, *second);
    m_compared->setInk(compared->agrees ? look::Role::Ink : look::Role::LookAgain);
    m_compared->setText(compared->agrees ? tr("Over ten seconds the first reads %1 more than the second: "
                                              "within the %2 that their steps allow.")
                                               .arg(difference, allowed)
                                         : tr("Over ten seconds the first reads %1 more than the second: "
                                              "beyond the %2 that their steps allow.")
                                               .arg(difference, allowed));
}

void LivePanel::showCounts() {
    const auto& recorder = m_first.recorder();
    const bool isRecording = recorder.isRecording();
    m_record->setWords(isRecording ? tr("End the recording") : tr("Record"));
    m_record->setEnabled(isRecording || m_first.source() != nullptr);
    m_zeroButton->setEnabled(m_first.source() != nullptr);
    for (auto* mark : m_marks) {
        mark->setEnabled(isRecording);
    }
    QStringList sentences;
    if (isRecording) {
        const auto seconds = std::chrono::duration_cast<std::chrono::seconds>(recorder.passed()).count();
        sentences << tr("Recording for %1: %2 readings.")
                         .arg(QStringLiteral("%1:%2").arg(seconds / 60).arg(seconds % 60, 2, 10, QChar(u'0')),
                              countText(recorder.taken().trace.size()));
        if (m_second.recorder().isRecording()) {
            sentences << tr("Of the second gauge: %1 readings.")
                             .arg(countText(m_second.recorder().taken().trace.size()));
        }
        if (!recorder.hasJournal() ||
            (m_second.recorder().isRecording() && !m_second.recorder().hasJournal())) {
            sentences << tr("It can't be written to the disk: if the program fails, it is lost.");
        }
    }
    for (const auto* watch : {&m_first, &m_second}) {
        const auto& one = watch->recorder();
        const QString name = QString::fromStdString(watch->profile().name);
        if (one.thinned() > 0) {
            sentences << tr("%1 sends more than %2 readings a second: %3 were left out.")
                             .arg(name)
                             .arg(Recorder::kMostASecond)
                             .arg(countText(one.thinned()));
        }
        if (one.isFull()) {
            sentences << tr("The recording of %1 is full and takes no more; %2 readings came since.")
                             .arg(name, countText(one.tooMany()));
        }
    }
    if (const auto* source = m_first.source()) {
        if (const auto unread = source->refusals() + source->tooLong(); unread > 0) {
            sentences << tr("Lines without a reading so far: %1.").arg(countText(unread));
        }
    }
    m_counts->setText(sentences.join(u' '));
    m_counts->setVisible(!sentences.isEmpty());
}

void LivePanel::showPlot() {
    const auto& recorder = m_first.recorder();
    if (recorder.isRecording() || !recorder.taken().trace.empty()) {
        const auto& second = m_second.recorder().taken();
        m_plot->show(
            livePlot(recorder.taken(), {QString::fromStdString(second.origin.name), second.trace}, m_words));
        return;
    }
    TakenTrace seen;
    seen.origin = originOf(m_first.profile(), m_clock.now());
    seen.trace = m_first.recent(Watch::kRemembered);
    PlotBeside beside;
    if (m_second.source() != nullptr) {
        beside = {QString::fromStdString(m_second.profile().name), m_second.recent(Watch::kRemembered)};
    }
    m_plot->show(livePlot(seen, beside, m_words));
}

void LivePanel::tick() {
    showFigure(m_figure, m_first);
    showFigure(m_otherFigure, m_second);
    showState();
    showCompared();
    showCounts();
    if (m_tickCount++ % kBeatsToAPlot == 0) {
        showPlot();
    }
}

}  // namespace hearth::ui::gauge
