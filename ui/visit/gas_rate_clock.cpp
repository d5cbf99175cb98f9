// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/visit/gas_rate_clock.h"

#include "ui/shell/kit.h"
#include "ui/visit/part_view.h"
#include "ui/visit/subject_name.h"

#include <QHBoxLayout>
#include <QKeySequence>
#include <QVBoxLayout>

#include <algorithm>

namespace hearth::ui::visit {

using reg::Item;

namespace {

constexpr std::chrono::milliseconds kRateTick{100};

}  // namespace

GasRateClock::GasRateClock(const SheetContext& context, reg::ApplianceId appliance, QWidget* parent)
    : QWidget(parent),
      m_context(context),
      m_appliance(appliance),
      m_figure(new shell::Text({}, look::TypeRole::Title, look::Role::Ink, this)),
      m_notKept(new shell::Text({}, look::TypeRole::Body, look::Role::LookAgain, this)),
      m_button(new shell::KeyButton({}, shell::ButtonKind::Quiet, this)) {
    auto* lines = new QVBoxLayout(this);
    lines->setContentsMargins(0, 0, 0, 0);
    auto* line = new QHBoxLayout;
    line->addWidget(m_button);
    line->addWidget(m_figure);
    line->addStretch();
    lines->addLayout(line);
    lines->addWidget(m_notKept);
    m_notKept->setObjectName(QStringLiteral("rateNotKept"));
    m_notKept->setWordWrap(true);
    m_button->setObjectName(QStringLiteral("gasRateButton"));
    passByEnter(m_button);
    leaveOutByEnter(m_button);
    connect(m_button, &QPushButton::clicked, this, &GasRateClock::toggle);
    m_ticks.setInterval(kRateTick);
    connect(&m_ticks, &QTimer::timeout, this, &GasRateClock::tick);
    Instant left{};
    const auto noted = m_context.model.store().setting(note());
    if (noted && parseInstant(*noted, left)) {
        m_startedAt = left;
        m_ticks.start();
    }
    setReadOnly(m_context.model.isReadOnly());
    tick();
}

std::string GasRateClock::note() const {
    return "gas_rate." + m_context.model.file().visit.id.text() + "." + m_appliance.text();
}

void GasRateClock::say(const Result<void>& done) {
    if (!done) {
        m_context.window.navigator.say(m_context.window.words.error(done.error()));
    }
}

void GasRateClock::toggle() {
    if (m_context.model.isReadOnly()) {
        return;
    }
    isRunning() ? stop() : start();
    setAsked(m_isAsked);
}

void GasRateClock::setAsked(bool asked) {
    m_isAsked = asked;
    setVisible(m_isAsked || isRunning());
    tick();
}

/// A time that was kept is not taken away by one key.
bool GasRateClock::mayStartAgain() {
    if (m_context.model.file().find(reg::subject(m_appliance), Item::RateTime) == nullptr) {
        return true;
    }
    const QStringList answers{tr("Start again"), tr("Keep what is there")};
    return m_context.window.dialogs.ask(
               this, tr("Time the gas rate again?"),
               tr("The new time takes the place of the one on the sheet. The change log keeps that."),
               answers, 1) == 0;
}

void GasRateClock::start() {
    if (!m_isAsked || !mayStartAgain()) {
        return;
    }
    const Instant now = m_context.window.clock.now();
    if (const auto noted = m_context.model.store().saveSetting(note(), instantText(now)); !noted) {
        say(noted);
        return;
    }
    m_startedAt = now;
    m_mark = m_context.window.clock.elapsed();
    m_ticks.start();
}

/// False: it could not be written down.
bool GasRateClock::keepTime() {
    constexpr double kThousand = 1000.0;
    const QString seconds = QString::number(static_cast<double>(passed().count()) / kThousand, 'f', 1);
    const auto entered =
        m_context.model.enter(reg::subject(m_appliance), Item::RateTime, seconds, quantity::UnitCode::Second);
    say(entered);
    return entered.has_value();
}

void GasRateClock::stop() {
    const bool isKept = m_isAsked;
    if (isKept && !keepTime()) {
        return;  // it runs on: the time is not lost
    }
    m_startedAt.reset();
    m_mark.reset();
    m_ticks.stop();
    say(m_context.model.store().saveSetting(note(), {}));
    if (isKept) {
        Q_EMIT kept();
    }
}

/// By the clock that runs on through sleep; after another start of the program by the wall clock.
std::chrono::milliseconds GasRateClock::passed() const {
    if (m_mark) {
        return m_context.window.clock.elapsed() - *m_mark;
    }
    return m_startedAt ? std::chrono::duration_cast<std::chrono::milliseconds>(m_context.window.clock.now() -
                                                                               *m_startedAt)
                       : std::chrono::milliseconds{0};
}

QString GasRateClock::figure() const {
    if (!isRunning()) {
        return {};
    }
    const auto tenths = std::max<std::int64_t>(0, passed().count() / 100);
    constexpr std::int64_t kMinute = 600;
    return QStringLiteral("%1:%2.%3")
        .arg(tenths / kMinute)
        .arg(tenths % kMinute / 10, 2, 10, QLatin1Char('0'))
        .arg(tenths % 10);
}

void GasRateClock::tick() {
    m_figure->setText(figure());
    m_figure->setVisible(isRunning());
    m_notKept->setText(isRunning() && !m_isAsked
                           ? tr("No gas rate is asked of it any more. The time goes on in case that was a "
                                "wrong key, and is not kept when you stop it.")
                           : QString());
    m_notKept->setVisible(!m_notKept->text().isEmpty());
    const QString words = !isRunning() ? tr("Time the gas rate")
                          : m_isAsked  ? tr("Stop timing the gas rate")
                                       : tr("Stop without keeping the time");
    if (m_button->text() != words) {
        m_button->setWords(words);
        m_button->showKey(QKeySequence(Qt::CTRL | Qt::Key_Return).toString(QKeySequence::NativeText));
        m_button->setAccessibleName(subjectContext(m_context, reg::subject(m_appliance)) +
                                    QStringLiteral(", ") + words);
    }
}

void GasRateClock::setReadOnly(bool readOnly) {
    m_button->setEnabled(!readOnly);
}

}  // namespace hearth::ui::visit
