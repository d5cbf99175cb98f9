// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/visit/stage_timer.h"

#include <QWidget>

#include <optional>
#include <vector>

namespace hearth::ui::visit {

/// How far a stage is.
enum class StageState { Waiting, Running, Due, Done };

struct StripStage {
    Stage stage = Stage::LetBy;
    StageState state = StageState::Waiting;
    std::optional<std::chrono::seconds> needed;
    double share = 0.0;  // of its time that has passed, 0 to 1
    bool operator==(const StripStage&) const = default;
};

/// The stages as a strip with their times. Left and Right choose the stage that the next start begins with.
class StageStrip : public QWidget {
    Q_OBJECT
  public:
    explicit StageStrip(QWidget* parent);

    void setStages(const std::vector<StripStage>& stages, std::optional<Stage> chosen);
    [[nodiscard]] const std::vector<StripStage>& stages() const { return m_stages; }
    [[nodiscard]] QSize sizeHint() const override { return {480, 34}; }
    [[nodiscard]] QSize minimumSizeHint() const override { return {320, 34}; }

  Q_SIGNALS:
    void chosen(hearth::ui::visit::Stage stage);

  protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;

  private:
    [[nodiscard]] std::vector<QRectF> boxes() const;
    void paintStage(QPainter& painter, const StripStage& stage, const QRectF& box) const;
    void step(int by);
    void describe();

    std::vector<StripStage> m_stages;
    std::optional<Stage> m_chosen;
};

[[nodiscard]] QString stageName(Stage stage);
[[nodiscard]] QString stageStateName(StageState state);
/// "1:00", "0:46"; hours are not to be expected.
[[nodiscard]] QString clockText(std::chrono::seconds time);

}  // namespace hearth::ui::visit
