// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/gauge/air_panel.h"

#include "core/air/figures.h"
#include "core/quantity/units.h"
#include "core/record/trace_text.h"
#include "ui/gauge/gauge_words.h"
#include "ui/gauge/left_recordings.h"
#include "ui/gauge/live_figure.h"
#include "ui/gauge/simulated_band.h"
#include "ui/shell/flow_layout.h"
#include "ui/shell/kit.h"
#include "ui/shell/plot_view.h"
#include "ui/words/room_trace_words.h"

#include <QVBoxLayout>

#include <algorithm>
#include <array>
#include <utility>

namespace hearth::ui::gauge {

namespace {

using air::CoPlace;
using quantity::UnitCode;
using std::chrono::milliseconds;

constexpr milliseconds kAirBeat{250};
constexpr int kBeatsToAnAirPlot = 4;
constexpr std::array kProbePlaces{CoPlace::Outside, CoPlace::Room, CoPlace::AtAppliance, CoPlace::NextRoom};

}  // namespace

AirPanel::AirPanel(std::vector<GaugeProfile> profiles, AirLevels levels, const QString& folder,
                   const Clock& clock, const words::Words& words, QWidget* parent)
    : QWidget(parent),
      m_profiles(std::move(profiles)),
      m_levels(std::move(levels)),
      m_folder(folder),
      m_clock(clock),
      m_words(words),
      m_watch(clock) {
    setObjectName(QStringLiteral("airPanel"));
    setAccessibleName(tr("Carbon monoxide, live"));
    for (auto& practice : GaugeWords::practiceRooms()) {
        m_profiles.push_back(std::move(practice));
    }
    auto* lines = new QVBoxLayout(this);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->setSpacing(look::kGap);
    lines->addWidget(shell::headingText(tr("Carbon monoxide, live"), this));
    addTexts(lines);
    addChoices(lines);
    m_simulated = makeSimulatedBand(this);
    lines->addWidget(m_simulated);
    m_figure = new LiveFigure(this);
    m_figure->setObjectName(QStringLiteral("airFigure"));
    lines->addWidget(m_figure);
    addButtons(lines);
    m_plot = new shell::PlotView(this);
    m_plot->setObjectName(QStringLiteral("airPlot"));
    lines->addWidget(m_plot);
    m_left = new LeftRecordings(words, this);
    lines->addWidget(m_left);
    connect(m_left, &LeftRecordings::wanted, this, &AirPanel::watched);
    connect(&m_watch, &Watch::changed, this, &AirPanel::showState);
    connect(&m_watch, &Watch::heard, this, &AirPanel::hear);
    connect(&m_ticks, &QTimer::timeout, this, &AirPanel::tick);
    m_ticks.start(kAirBeat);
    m_left->look(m_folder, true);
    tick();
}

AirPanel::~AirPanel() {
    // A watch that goes on ends as it would by a key; its journal stays, and is offered the next time.
    m_watch.end();
}

/// What has to be read first stands above everything else.
void AirPanel::addTexts(QVBoxLayout* lines) {
    m_dangerText = shell::namedText("airDanger", look::TypeRole::Heading, look::Role::Fail, this);
    m_dangerText->hide();
    lines->addWidget(m_dangerText);
    lines->addWidget(shell::softText(
        tr("The instrument stays in the room and is read out here: nobody goes in for a figure. What is seen "
           "here decides nothing; findings rest on the readings in the series."),
        this));
}

void AirPanel::addChoices(QVBoxLayout* lines) {
    std::vector<input::ChoiceItem> instruments;
    for (std::size_t i = 0; i < m_profiles.size(); ++i) {
        instruments.push_back({QString::number(i), QString::fromStdString(m_profiles[i].name)});
    }
    std::vector<input::ChoiceItem> places;
    for (const auto place : kProbePlaces) {
        const auto code = record::codeOf(place);
        places.push_back(
            {shell::coded(code), m_words.choice(reg::Item::RoomCoPlace, std::string(code)).remove(u'&')});
    }
    auto* fields = new shell::Fields(1, this);  // the practice rooms' names are long
    m_gauge = input::makeListEditor(fields, instruments);
    m_gauge->setLabel(tr("Instrument"), tr("Carbon monoxide, live"));
    m_gauge->setObjectName(QStringLiteral("airChoice"));
    m_place = input::makeListEditor(fields, places);
    m_place->setLabel(tr("Where its probe is"), tr("Carbon monoxide, live"));
    m_place->setObjectName(QStringLiteral("airPlace"));
    fields->add(m_gauge);
    fields->add(m_place);
    lines->addWidget(fields);
    connect(m_gauge, &input::Editor::committed, this,
            [this](const QString& code) { choose(code.isEmpty() ? -1 : code.toInt()); });
    connect(m_place, &input::Editor::committed, this, [this] {
        if (const auto place = record::coPlaceFromCode(m_place->text().toStdString())) {
            m_place->setProblem({});
            m_watch.recorder().setPlace(*place);
        }
    });
}

void AirPanel::addButtons(QVBoxLayout* lines) {
    const auto sentence = [&](shell::Text*& text, const char* name) {
        text = shell::bodyText({}, this);
        text->setObjectName(QLatin1String(name));
        text->hide();
        lines->addWidget(text);
    };
    sentence(m_state, "airState");
    sentence(m_counts, "airCounts");
    sentence(m_said, "airSaid");
    auto* buttons = new shell::FlowLayout(nullptr, look::kGap);
    m_record = new shell::KeyButton(tr("Begin the watch"), shell::ButtonKind::Primary, this);
    m_record->showKey(QKeySequence(Qt::CTRL | Qt::Key_Return).toString(QKeySequence::NativeText));
    m_record->setObjectName(QStringLiteral("airRecordButton"));
    connect(m_record, &QPushButton::clicked, this, &AirPanel::toggle);
    buttons->addWidget(m_record);
    m_take = new shell::KeyButton(tr("Take a reading now"), QKeySequence(Qt::ALT | Qt::Key_9),
                                  shell::ButtonKind::Plain, this);
    m_take->setObjectName(QStringLiteral("airTakeButton"));
    connect(m_take, &QPushButton::clicked, this, &AirPanel::takeReading);
    buttons->addWidget(m_take);
    lines->addLayout(buttons);
}

std::optional<CoPlace> AirPanel::placeSaid() {
    const auto place = record::coPlaceFromCode(m_place->text().toStdString());
    m_place->setProblem(place ? QString() : tr("Say where the probe is: a reading without it is of no use."));
    if (!place) {
        m_place->focusTarget()->setFocus(Qt::OtherFocusReason);
    }
    return place;
}

std::optional<quantity::Share> AirPanel::level() const {
    const auto& last = m_watch.last();
    return last ? coOf(last->line.value, last->line.unit) : std::nullopt;
}

QString AirPanel::ppm(quantity::Share share) const {
    return m_words.figure(air::ppmFigure(share));
}

void AirPanel::choose(int profile) {
    if (m_watch.recorder().isRecording()) {
        toggle();  // what was watched of the other instrument is not lost
    }
    // What an instrument saw stays said, whichever is asked next; only practice leaves nothing behind.
    setDangerOf(true, std::nullopt);
    say({});
    if (profile < 0 || profile >= static_cast<int>(m_profiles.size())) {
        m_watch.end();
    } else {
        const auto begun = m_watch.begin(m_profiles[static_cast<std::size_t>(profile)]);
        m_gauge->setText(QString::number(profile));
        m_gauge->setProblem(begun ? QString() : GaugeWords::refusal(begun.error()));
    }
    tick();
}

void AirPanel::setLevels(AirLevels levels) {
    if (levels == m_levels) {
        return;
    }
    m_levels = std::move(levels);
    m_tickCount = 0;
    hear();
    tick();
}

void AirPanel::takeFocus() {
    m_gauge->focusTarget()->setFocus(Qt::OtherFocusReason);
}

void AirPanel::keyPressEvent(QKeyEvent* event) {
    if (shell::isEnter(*event) && event->modifiers().testFlag(Qt::ControlModifier)) {
        toggle();
        return;
    }
    QWidget::keyPressEvent(event);
}

bool AirPanel::begin() {
    const auto place = placeSaid();
    if (m_watch.source() == nullptr || !place) {
        return false;
    }
    if (level() && !m_watch.isStale() && *level() < m_levels.dangerFrom) {
        setDangerOf(isPractice(), std::nullopt);
    }
    auto& recorder = m_watch.recorder();
    recorder.setPlace(*place);
    recorder.begin(originOf(m_watch.profile(), m_clock.now()), m_folder);
    Q_EMIT recordingChanged(true);
    return true;
}

void AirPanel::toggle() {
    auto& recorder = m_watch.recorder();
    if (recorder.isRecording()) {
        recorder.end();
        Q_EMIT recordingChanged(false);
        if (!recorder.taken().isEmpty()) {
            Q_EMIT watched(recorder.taken());
        } else {
            recorder.discardJournal();
        }
    } else {
        begin();
    }
    m_tickCount = 0;  // what was watched is seen at once, not some beats later
    tick();
}

/// A reading is of now, or it is none: an old one is not taken for one.
void AirPanel::takeReading() {
    auto& recorder = m_watch.recorder();
    if (!level()) {
        say(m_watch.last() ? GaugeWords::onlyPpm() : tr("No reading has come yet: nothing was taken."));
        return;
    }
    if (m_watch.isStale()) {
        say(tr("The last reading came %1, so it is none of now: nothing was taken.")
                .arg(GaugeWords::age(*m_watch.age())));
        return;
    }
    const auto place = placeSaid();
    if (!place || (!recorder.isRecording() && !begin())) {
        return;
    }
    const auto& last = *m_watch.last();
    AirTaken reading{recorder.taken().origin, last.line.value, *place, m_clock.now() - *m_watch.age()};
    // The watch may have begun just now, after this reading came.
    reading.at = std::max(reading.at, reading.origin.beganAt.value_or(reading.at));
    say(tr("Taken: %1, %2.")
            .arg(m_words.figure({last.line.value, UnitCode::Ppm}),
                 m_words.choice(reg::Item::RoomCoPlace, std::string(record::codeOf(*place))).remove(u'&')));
    Q_EMIT taken(reading);
}

void AirPanel::kept() {
    if (!m_watch.recorder().isRecording()) {
        m_watch.recorder().discardJournal();
    }
    m_left->taken();
}

/// Each reading is looked at, so that no short peak goes by between two ticks.
void AirPanel::hear() {
    const auto now = level();
    if (now && *now >= m_levels.dangerFrom) {
        setDangerOf(isPractice(), std::max(*now, m_danger.of(isPractice()).value_or(*now)));
    }
}

bool AirPanel::isPractice() const {
    return m_watch.source() != nullptr && m_watch.source()->isSimulated();
}

void AirPanel::setDangerOf(bool isSimulated, std::optional<quantity::Share> highest) {
    auto danger = m_danger;
    danger.of(isSimulated) = highest;
    setDanger(danger);
}

void AirPanel::setDanger(const AirDanger& danger) {
    const bool was = isDanger();
    m_danger = danger;
    showDanger();
    if (was != isDanger()) {
        Q_EMIT dangerChanged(isDanger());
    }
}

void AirPanel::say(const QString& sentence) {
    m_said->setText(sentence);
    m_said->setVisible(!sentence.isEmpty());
}

void AirPanel::showDanger() {
    m_dangerText->setVisible(isDanger());
    if (isDanger()) {
        m_dangerText->setText(
            tr("Leave; do not go in to read it. It was %1 at the highest; from %2 on everybody "
               "leaves.")
                .arg(ppm(m_danger.seen ? *m_danger.seen : *m_danger.practice), ppm(m_levels.dangerFrom)));
    }
}

void AirPanel::showFigure() {
    LiveFigure::Shown now;
    now.name = QString::fromStdString(m_watch.profile().name);
    if (level()) {
        const auto& last = *m_watch.last();
        now.figure = m_words.figure({last.line.value, UnitCode::None});
        now.unit = m_words.unit(last.line.unit);
        now.age = GaugeWords::age(*m_watch.age());
        now.isStale = m_watch.isStale();
        now.isDanger = *level() >= m_levels.dangerFrom;
    }
    m_figure->show(now);
}

void AirPanel::showState() {
    const auto* source = m_watch.source();
    m_state->setVisible(true);
    m_simulated->setVisible(isPractice());
    if (source == nullptr) {
        m_state->setInk(look::Role::Ink);
        m_state->setText(tr("Choose an instrument to watch."));
        return;
    }
    QStringList sentences{GaugeWords::state(*source, m_watch.profile())};
    const bool isOtherwise = m_watch.last() && !level();
    if (const auto& refused = m_watch.refused()) {
        sentences << tr("A line gave no reading: “%1”: %2.")
                         .arg(GaugeWords::line(refused->line), GaugeWords::refusal(refused->why));
    }
    if (isOtherwise ||
        (m_watch.refused() && m_watch.refused()->why.fault == exchange::LineFault::UnitUnknown)) {
        sentences << GaugeWords::onlyPpm();
    }
    const bool isStale = level() && m_watch.isStale();
    if (isStale) {
        sentences << tr("What the level is now is not known. Do not go in to see why.");
    }
    m_state->setInk(isStale || isOtherwise ? look::Role::LookAgain : look::Role::Ink);
    m_state->setText(sentences.join(u' '));
}

void AirPanel::showCounts() {
    const auto& recorder = m_watch.recorder();
    const bool isRecording = recorder.isRecording();
    m_record->setWords(isRecording ? tr("End the watch") : tr("Begin the watch"));
    m_record->setEnabled(isRecording || m_watch.source() != nullptr);
    m_take->setEnabled(m_watch.source() != nullptr);
    QStringList sentences;
    if (isRecording) {
        const auto seconds = std::chrono::duration_cast<std::chrono::seconds>(recorder.passed()).count();
        const auto& air = recorder.taken().air;
        sentences << tr("Watched for %1: %2 readings.")
                         .arg(QStringLiteral("%1:%2").arg(seconds / 60).arg(seconds % 60, 2, 10, QChar(u'0')))
                         .arg(air.size());
        if (!recorder.hasJournal()) {
            sentences << tr("It can't be written to the disk: if the program fails, it is lost.");
        }
    }
    if (recorder.thinned() > 0) {
        sentences << tr("The instrument sends more than %1 readings a second: %2 were left out of the watch.")
                         .arg(Recorder::kMostASecond)
                         .arg(recorder.thinned());
    }
    if (const auto* source = m_watch.source()) {
        if (const auto unread = source->refusals() + source->tooLong(); unread > 0) {
            sentences << tr("Lines without a reading so far: %1.").arg(unread);
        }
    }
    if (recorder.isFull()) {
        sentences
            << tr("The watch is full and takes no more; %1 readings came since.").arg(recorder.tooMany());
    }
    m_counts->setText(sentences.join(u' '));
    m_counts->setVisible(!sentences.isEmpty());
}

void AirPanel::showPlot() {
    const auto& taken = m_watch.recorder().taken();
    const bool isTaken = !taken.air.empty();
    record::RoomTrace trace;
    trace.source.name = m_watch.profile().name;
    trace.readings = isTaken ? taken.air : m_watch.recentAir(Watch::kRemembered);
    m_plot->show(words::roomTracePlots(trace, isTaken ? taken.gaps : std::vector<tightness::Span>(),
                                       m_levels.limits, m_words));
}

void AirPanel::tick() {
    showFigure();
    showState();
    showCounts();
    if (m_tickCount++ % kBeatsToAnAirPlot == 0) {
        showPlot();
    }
}

}  // namespace hearth::ui::gauge
