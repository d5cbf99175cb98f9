// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/visit/test_clock.h"

#include "core/rulebook/rules_in_force.h"
#include "ui/look/look.h"
#include "ui/shell/kit.h"
#include "ui/visit/clock_face.h"
#include "ui/visit/joined.h"
#include "ui/visit/part_view.h"
#include "ui/visit/subject_name.h"
#include "ui/visit/wanted.h"

#include <QApplication>
#include <QBoxLayout>
#include <QKeyEvent>

#include <algorithm>
#include <array>

namespace hearth::ui::visit {

using reg::Item;
using rulebook::Rule;
using std::chrono::milliseconds;
using std::chrono::seconds;

namespace {

constexpr milliseconds kTick{200};
/// A stage that was left running longer ago than that was given up, not interrupted.
constexpr std::chrono::hours kStillRunning{1};
constexpr std::array kTimed{Stage::LetBy, Stage::Settle, Stage::Tightness, Stage::Retest};

/// Whole seconds as a clock that counts down shows them: 0:01 until nothing is left.
seconds roundedUp(milliseconds time) {
    return std::chrono::ceil<seconds>(time);
}

}  // namespace

TestClock::TestClock(const SheetContext& context, std::size_t test, QWidget* parent)
    : QWidget(parent),
      m_context(context),
      m_test(test),
      m_timer(context.window.clock),
      m_strip(new StageStrip(this)) {
    m_bell = [this] {
        QApplication::beep();
        QApplication::alert(window());
    };
    if (const QString own = subjectContext(context, reg::subject(this->test().id)); !own.isEmpty()) {
        m_strip->setAccessibleName(own + QStringLiteral(", ") + m_strip->accessibleName());
    }
    m_face = new ClockFace(ClockFace::Size::Big, this);
    m_reading = new ClockFace(ClockFace::Size::Middle, this);
    m_button = new shell::KeyButton({}, shell::ButtonKind::Primary, this);
    m_button->setObjectName(QStringLiteral("stageButton"));
    leaveOutByEnter(m_strip);
    leaveOutByEnter(m_button);
    m_advice = shell::bodyText({}, this);
    m_refused = new shell::Text({}, look::TypeRole::Small, look::Role::Fail, this);
    m_refused->setWordWrap(true);
    m_refused->hide();
    // Each line by itself: in one grid, a long name on the button would push the clock's face aside.
    auto* lines = new QVBoxLayout(this);
    lines->setContentsMargins(0, look::kGap, 0, look::kGap);
    lines->setSpacing(look::kGap);
    lines->addWidget(m_strip);
    lines->addWidget(m_advice);
    lines->addWidget(m_button, 0, Qt::AlignLeft);
    auto* faces = new QHBoxLayout;
    faces->setSpacing(3 * look::kGap);
    faces->addWidget(m_face);
    faces->addWidget(m_reading, 1);
    lines->addLayout(faces);
    lines->addWidget(m_refused);
    m_ticks.setInterval(kTick);
    connect(&m_ticks, &QTimer::timeout, this, &TestClock::tick);
    connect(m_button, &QPushButton::clicked, this, &TestClock::toggle);
    m_strip->installEventFilter(this);
    m_button->installEventFilter(this);
    connect(m_strip, &StageStrip::chosen, this, [this](Stage stage) {
        if (!m_timer.running()) {
            m_chosen = stage;
            refresh();
        }
    });
}

std::optional<Item> TestClock::nextReading() const {
    const auto stage = m_timer.running() ? m_timer.running() : next();
    const auto items = stage ? itemsOf(*stage) : std::nullopt;
    if (!items) {
        return std::nullopt;
    }
    if (!has(items->start)) {
        return items->start;
    }
    return has(items->end) ? std::nullopt : std::optional(items->end);
}

bool TestClock::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::KeyPress) {
        // Whoever types a figure here means the reading; what is typed is not lost.
        auto* key = static_cast<QKeyEvent*>(event);
        const QString text = key->text();
        const auto reading = text.size() == 1 && text[0].isDigit() ? nextReading() : std::nullopt;
        if (reading) {
            Q_EMIT readingWanted(*reading);
            if (QWidget* field = QApplication::focusWidget(); field != nullptr && field != watched) {
                QCoreApplication::sendEvent(field, key);
                return true;
            }
        }
    }
    return QWidget::eventFilter(watched, event);
}

const reg::Test& TestClock::test() const {
    return m_context.model.file().tests[m_test];
}

bool TestClock::has(Item item) const {
    return m_context.model.file().find(reg::subject(test().id), item) != nullptr;
}

bool TestClock::isDone(Stage stage) const {
    if (stage == Stage::Raise) {
        return m_isRaised || has(Item::SettleStart) || has(Item::SettleStartedAt) || has(Item::TightStart);
    }
    const auto items = itemsOf(stage);
    return items && m_timer.running() != stage && (has(items->endedAt) || has(items->end));
}

bool TestClock::isLetByFound() const {
    const auto& findings = m_context.model.findings();
    return std::any_of(findings.begin(), findings.end(), [&](const judging::Judged& judged) {
        return judged.finding.kind == rulebook::FindingKind::LetBy &&
               judged.subject == reg::subject(test().id) && judged.finding.outcome == rulebook::Outcome::Fail;
    });
}

std::vector<Stage> TestClock::stages() const {
    std::vector<Stage> stages{Stage::LetBy, Stage::Raise, Stage::Settle, Stage::Tightness};
    if (isRetestWanted(reg::subject(test().id), m_context.model.file(), m_context.model.findings())) {
        stages.push_back(Stage::Retest);
    }
    stages.push_back(Stage::Restore);
    return stages;
}

std::optional<Stage> TestClock::next() const {
    if (m_timer.running()) {
        return std::nullopt;
    }
    if (m_chosen) {
        return m_chosen;
    }
    if (isLetByFound()) {
        return std::nullopt;
    }
    const auto all = stages();
    const auto at = std::find_if(all.begin(), all.end(), [this](Stage stage) { return !isDone(stage); });
    return at == all.end() ? std::nullopt : std::optional(*at);
}

void TestClock::toggle() {
    if (m_context.model.isReadOnly()) {
        return;
    }
    if (const auto running = m_timer.running()) {
        stop();
        if (*running == Stage::Raise) {
            start(Stage::Settle);
        }
        return;
    }
    const auto stage = next();
    if (stage == Stage::Restore) {
        m_chosen.reset();
        Q_EMIT restoreWanted();
    } else if (stage) {
        start(*stage);
    }
}

bool TestClock::mayStartAgain(Stage stage) {
    const auto items = itemsOf(stage);
    if (!items || !(has(items->end) || has(items->startedAt) || has(items->endedAt))) {
        return true;
    }
    const QStringList answers{tr("Start again"), tr("Keep what is there")};
    const int answer = m_context.window.dialogs.ask(
        this, tr("Start %1 again?").arg(stageName(stage)),
        tr("Its readings and times are taken off the sheet. The change log keeps them."), answers, 1);
    if (answer != 0) {
        return false;
    }
    auto& model = m_context.model;
    for (const Item item : {items->start, items->end, items->startedAt, items->endedAt}) {
        if (!has(item)) {
            continue;
        }
        if (const auto cleared = model.enter(reg::subject(test().id), item, {}); !cleared) {
            m_refused->setText(m_context.window.words.error(cleared.error()));
            m_refused->show();
            return false;
        }
    }
    return true;
}

void TestClock::start(Stage stage) {
    m_chosen.reset();
    if (!mayStartAgain(stage)) {
        refresh();
        return;
    }
    m_timer.setPlan(stagePlan(m_context.model.file(), test(), m_context.model.book()));
    m_timer.start(stage);
    m_ticks.start();
    if (const auto items = itemsOf(stage)) {
        keepTime(items->startedAt, m_timer.startedAt());
        Q_EMIT readingWanted(has(items->start) ? items->end : items->start);
    }
    refresh();
    Q_EMIT runningChanged();
}

void TestClock::stop() {
    const auto run = m_timer.stop();
    m_ticks.stop();
    if (!run) {
        return;
    }
    m_isRaised = m_isRaised || run->stage == Stage::Raise;
    if (const auto items = itemsOf(run->stage)) {
        keepTime(items->endedAt, run->endedAt);
        if (!has(items->end)) {
            Q_EMIT readingWanted(items->end);
        }
    }
    refresh();
    Q_EMIT runningChanged();
}

void TestClock::endReadingBegun(Stage stage) {
    if (m_timer.running() == stage && m_timer.isDue()) {
        stop();
    }
}

void TestClock::keepTime(Item item, Instant at) {
    const auto kept =
        m_context.model.enter(reg::subject(test().id), item, QString::fromStdString(timeOfDay(at)));
    m_refused->setText(kept ? QString() : m_context.window.words.error(kept.error()));
    m_refused->setVisible(!kept);
}

void TestClock::takeUp() {
    if (const auto running = m_timer.running()) {
        const auto items = itemsOf(*running);
        if (items && !has(items->startedAt)) {  // the start was undone
            m_timer.stop();
            m_ticks.stop();
            Q_EMIT runningChanged();
        }
        return;
    }
    const auto& file = m_context.model.file();
    const auto& clock = m_context.window.clock;
    for (const Stage stage : kTimed) {
        const auto items = itemsOf(stage);
        const reg::Entry* started = file.find(reg::subject(test().id), items->startedAt);
        Instant at{};
        if (started == nullptr || has(items->endedAt) || has(items->end) ||
            !instantAt(file.visit.date, started->canonical, at)) {
            continue;
        }
        const auto since = clock.now() - at;
        if (since >= milliseconds(0) && since < kStillRunning && !m_context.model.isReadOnly()) {
            m_timer.setPlan(stagePlan(file, test(), m_context.model.book()));
            m_timer.resume(stage, at);
            m_ticks.start();
            Q_EMIT runningChanged();
            return;
        }
    }
}

void TestClock::tick() {
    if (m_timer.takeBell()) {
        m_bell();
        const Stage stage = *m_timer.running();
        Q_EMIT said(tr("%1: time is up. Read the gauge.").arg(stageName(stage)));
        if (const auto items = itemsOf(stage)) {
            Q_EMIT readingWanted(items->end);
        }
    }
    showStrip();
    showFace();
    showButton();
}

void TestClock::refresh() {
    if (!m_timer.running()) {
        m_timer.setPlan(stagePlan(m_context.model.file(), test(), m_context.model.book()));
    }
    showStrip();
    showFace();
    showReading();
    showButton();
    const auto stage = m_timer.running() ? m_timer.running() : next();
    m_advice->setText(stage ? adviceFor(*stage)
                            : tr("The valve lets by: no tightness test until it is put right."));
}

void TestClock::showStrip() {
    std::vector<StripStage> shown;
    for (const Stage stage : stages()) {
        StripStage one{stage, StageState::Waiting, m_timer.plan().of(stage), 0.0};
        if (m_timer.running() == stage) {
            one.state = m_timer.isDue() ? StageState::Due : StageState::Running;
            const auto needed = one.needed.value_or(seconds(60));
            one.share = std::min(1.0, static_cast<double>(m_timer.passed().count()) /
                                          static_cast<double>(milliseconds(needed).count()));
        } else if (isDone(stage)) {
            one.state = StageState::Done;
        }
        shown.push_back(one);
    }
    m_strip->setStages(shown, next());
}

void TestClock::showFace() {
    const auto running = m_timer.running();
    const auto stage = running ? running : next();
    m_face->setVisible(stage && stage != Stage::Restore);
    if (!running) {
        showIdleFace(stage);
        return;
    }
    const auto left = m_timer.left();
    if (!left) {
        const bool timed = itemsOf(*running).has_value();
        m_face->setFigure(
            clockText(std::chrono::floor<seconds>(m_timer.passed())), {},
            timed ? tr("no time in the rule book: end it yourself") : tr("raising the pressure"));
    } else if (m_timer.isDue()) {
        m_face->setFigure(QStringLiteral("+") + clockText(std::chrono::floor<seconds>(-*left)), {},
                          tr("over: read the gauge now"), true);
    } else {
        m_face->setFigure(clockText(roundedUp(*left)), {},
                          tr("left of %1").arg(clockText(*m_timer.plan().of(*running))));
    }
}

void TestClock::showIdleFace(std::optional<Stage> stage) {
    const auto needed = stage ? m_timer.plan().of(*stage) : std::nullopt;
    const bool lacksTime = stage && itemsOf(*stage) && !needed;
    const QString name = stage ? stageName(*stage) : QString();
    m_face->setFigure(
        clockText(needed.value_or(seconds(0))), {},
        lacksTime ? tr("%1: no time in the rule book").arg(name) : tr("%1, not started").arg(name));
}

void TestClock::showReading() {
    const auto running = m_timer.running();
    const auto items = running ? itemsOf(*running) : std::nullopt;
    const auto& file = m_context.model.file();
    const reg::Entry* start = items ? file.find(reg::subject(test().id), items->start) : nullptr;
    m_reading->setVisible(start != nullptr);
    if (start == nullptr) {
        return;
    }
    const auto& words = m_context.window.words;
    const reg::Instrument* gauge = file.gaugeOf(test().id);
    QStringList caption{tr("at the start")};
    if (gauge != nullptr) {
        caption << QString::fromStdString(gauge->name);
        const auto step = gauge->resolution.value();
        caption << (step ? tr("reads to %1").arg(words.figure({*step, gauge->resolution.unit})) : QString());
    }
    m_reading->setFigure(QString::fromStdString(start->text), words.unit(start->unit), joined(caption));
}

void TestClock::showButton() {
    const auto stage = next();
    QString text = m_timer.running() == Stage::Raise ? tr("Raised: settle")
                   : m_timer.running()               ? tr("Stop")
                   : stage == Stage::Restore         ? tr("On to restore")
                   : stage                           ? tr("Start %1").arg(stageName(*stage))
                                                     : tr("Stopped");
    text += QStringLiteral("   Ctrl+Enter");
    if (text != m_button->text()) {
        const QString context = subjectContext(m_context, reg::subject(test().id));
        m_button->setWords(text);
        m_button->setAccessibleName(context.isEmpty() ? text : context + QStringLiteral(", ") + text);
    }
    m_button->setEnabled(!m_context.model.isReadOnly() && (m_timer.running() || stage));
}

QString TestClock::band(Rule rule) const {
    const auto& file = m_context.model.file();
    auto edition = editionOf(file, test());
    if (edition == rulebook::Edition::General) {
        edition = rulebook::Edition::Up1bEd4;
    }
    const rulebook::RulesInForce rules(m_context.model.book(), edition, file.installation.gas,
                                       file.visit.date);
    const rulebook::Entry* entry = rules.known(rule);
    return entry == nullptr ? QString() : m_context.window.words.ruleValue(*entry);
}

QString TestClock::adviceFor(Stage stage) const {
    const bool runs = m_timer.running() == stage;
    const auto to = [this](Rule rule) {
        const QString value = band(rule);
        return value.isEmpty() ? tr("the pressure that your standard gives") : value;
    };
    switch (stage) {
        case Stage::LetBy:
            return runs ? tr("Watch for a rise: the valve would be letting by.")
                        : tr("Open the valve slowly to %1, shut it, type the start reading. Then start the "
                             "minute.")
                              .arg(to(Rule::LetByPressure));
        case Stage::Raise:
            return tr("Open the valve slowly, bring the gauge to %1, shut the valve. Not higher: the "
                      "regulator may lock up.")
                .arg(to(Rule::TestPressure));
        case Stage::Settle:
            return tr(
                "Let it stand. If the gauge still drifts at the end, wait longer before you time the test.");
        case Stage::Tightness:
            return runs ? tr("Touch nothing. Nose open: any smell of gas fails the test.")
                        : tr("Bring the gauge back to %1 if it needs it, type the start reading, then start.")
                              .arg(to(Rule::TestPressure));
        case Stage::Retest:
            return tr(
                "Isolate the appliances at their valves, let the pressure settle again, then time it once "
                "more.");
        case Stage::Restore:
            break;
    }
    return tr("All stages are done.");
}

QString TestClock::figure() const {
    return m_face->figure();
}

}  // namespace hearth::ui::visit
