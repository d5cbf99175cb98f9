// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/visit/stage_strip.h"

#include "ui/look/look.h"
#include "ui/shell/kit.h"

#include <QCoreApplication>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>

#include <algorithm>

namespace hearth::ui::visit {

namespace {

constexpr double kBetween = 3;
constexpr double kUntimedWeight = 0.75;

/// Longer stages are wider, but none so wide that the others can't be read.
double weightOf(const StripStage& stage) {
    if (!stage.needed) {
        return kUntimedWeight;
    }
    const double minutes = static_cast<double>(stage.needed->count()) / 60.0;
    return std::clamp(minutes, 1.0, 2.0);
}

QString say(const char* text) {
    return QCoreApplication::translate("hearth::ui::visit::StageStrip", text);
}

}  // namespace

QString stageName(Stage stage) {
    switch (stage) {
        case Stage::LetBy:
            return say(QT_TRANSLATE_NOOP("hearth::ui::visit::StageStrip", "Let-by"));
        case Stage::Raise:
            return say(QT_TRANSLATE_NOOP("hearth::ui::visit::StageStrip", "Raise"));
        case Stage::Settle:
            return say(QT_TRANSLATE_NOOP("hearth::ui::visit::StageStrip", "Settle"));
        case Stage::Tightness:
            return say(QT_TRANSLATE_NOOP("hearth::ui::visit::StageStrip", "Tightness"));
        case Stage::Retest:
            return say(QT_TRANSLATE_NOOP("hearth::ui::visit::StageStrip", "Retest"));
        case Stage::Restore:
            break;
    }
    return say(QT_TRANSLATE_NOOP("hearth::ui::visit::StageStrip", "Restore"));
}

QString stageStateName(StageState state) {
    switch (state) {
        case StageState::Waiting:
            return say(QT_TRANSLATE_NOOP("hearth::ui::visit::StageStrip", "waiting"));
        case StageState::Running:
            return say(QT_TRANSLATE_NOOP("hearth::ui::visit::StageStrip", "running"));
        case StageState::Due:
            return say(QT_TRANSLATE_NOOP("hearth::ui::visit::StageStrip", "time is up"));
        case StageState::Done:
            break;
    }
    return say(QT_TRANSLATE_NOOP("hearth::ui::visit::StageStrip", "done"));
}

QString clockText(std::chrono::seconds time) {
    const auto count = time.count();
    return QStringLiteral("%1:%2").arg(count / 60).arg(count % 60, 2, 10, QLatin1Char('0'));
}

StageStrip::StageStrip(QWidget* parent) : QWidget(parent) {
    setFocusPolicy(Qt::StrongFocus);
    setAccessibleName(tr("Stages of the test"));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void StageStrip::setStages(const std::vector<StripStage>& stages, std::optional<Stage> chosen) {
    if (stages == m_stages && chosen == m_chosen) {
        return;
    }
    m_stages = stages;
    m_chosen = chosen;
    describe();
    update();
}

void StageStrip::describe() {
    QStringList said;
    for (const StripStage& stage : m_stages) {
        said << stageName(stage.stage) + u' ' + stageStateName(stage.state);
    }
    if (m_chosen) {
        said << tr("next: %1").arg(stageName(*m_chosen));
    }
    const QString description = said.join(QStringLiteral(", "));
    if (description != accessibleDescription()) {
        setAccessibleDescription(description);
    }
}

std::vector<QRectF> StageStrip::boxes() const {
    double weights = 0;
    for (const StripStage& stage : m_stages) {
        weights += weightOf(stage);
    }
    const double room = width() - kBetween * static_cast<double>(m_stages.size() - 1);
    std::vector<QRectF> boxes;
    double left = 0;
    for (const StripStage& stage : m_stages) {
        const double wide = room * weightOf(stage) / std::max(weights, 1.0);
        boxes.emplace_back(left, 0, wide, height());
        left += wide + kBetween;
    }
    return boxes;
}

void StageStrip::paintStage(QPainter& painter, const StripStage& stage, const QRectF& box) const {
    using look::Role;
    const auto scheme = shell::currentScheme();
    const bool isDue = stage.state == StageState::Due;
    const bool isRunning = stage.state == StageState::Running;
    const bool isDone = stage.state == StageState::Done;
    painter.fillRect(box, look::colour(isDue ? Role::Key : isDone ? Role::KeyGround : Role::Desk, scheme));
    if (isRunning) {
        painter.fillRect(QRectF(box.left(), box.top(), box.width() * stage.share, box.height()),
                         look::colour(Role::Selection, scheme));
    }
    const Role ink = isDue ? Role::OnKey : isRunning ? Role::Key : Role::Ink;
    painter.setFont(look::font(isRunning || isDue ? look::TypeRole::Heading : look::TypeRole::Body));
    painter.setPen(look::colour(ink, scheme));
    const QRectF words = box.adjusted(look::kGap, 0, -look::kGap, 0);
    const QString name = painter.fontMetrics().elidedText(stageName(stage.stage), Qt::ElideRight,
                                                          static_cast<int>(words.width()));
    const int nameWidth = painter.fontMetrics().horizontalAdvance(name);
    painter.drawText(words, Qt::AlignVCenter | Qt::AlignLeft, name);
    const QFontMetrics small(look::font(look::TypeRole::Small));
    // Where both don't fit the name stays: the time stands below the strip once its stage comes.
    if (stage.needed &&
        nameWidth + look::kGap + small.horizontalAdvance(clockText(*stage.needed)) <= words.width()) {
        painter.setFont(look::font(look::TypeRole::Small));
        painter.setPen(look::colour(isDue ? Role::OnKey : Role::SoftInk, scheme));
        painter.drawText(words, Qt::AlignVCenter | Qt::AlignRight, clockText(*stage.needed));
    }
    const bool isChosen = m_chosen == stage.stage;
    if (isRunning || (isChosen && !isDue)) {
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(look::colour(isRunning || hasFocus() ? Role::Focus : Role::Key, scheme),
                            hasFocus() ? 2 : 1.2));
        painter.drawRect(box.adjusted(1, 1, -1, -1));
    }
}

void StageStrip::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const auto places = boxes();
    for (std::size_t index = 0; index < m_stages.size(); ++index) {
        paintStage(painter, m_stages[index], places[index]);
    }
}

void StageStrip::step(int by) {
    const auto at = std::find_if(m_stages.begin(), m_stages.end(),
                                 [&](const StripStage& stage) { return stage.stage == m_chosen; });
    const auto index = at == m_stages.end() ? 0 : at - m_stages.begin();
    const auto next =
        std::clamp<std::ptrdiff_t>(index + by, 0, static_cast<std::ptrdiff_t>(m_stages.size()) - 1);
    Q_EMIT chosen(m_stages[static_cast<std::size_t>(next)].stage);
}

void StageStrip::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Left || event->key() == Qt::Key_Right) {
        step(event->key() == Qt::Key_Left ? -1 : 1);
        return;
    }
    const bool isEnter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (isEnter && event->modifiers() == Qt::NoModifier) {
        focusNextChild();  // as in every field: Enter goes on, it starts nothing
        return;
    }
    QWidget::keyPressEvent(event);
}

void StageStrip::mousePressEvent(QMouseEvent* event) {
    const auto places = boxes();
    for (std::size_t index = 0; index < m_stages.size(); ++index) {
        if (places[index].contains(event->position())) {
            Q_EMIT chosen(m_stages[index].stage);
        }
    }
}

}  // namespace hearth::ui::visit
