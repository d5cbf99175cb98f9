// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/register/visit_file.h"
#include "ui/visit/pipe_tree.h"
#include "ui/words/words.h"

#include <QWidget>

namespace hearth::ui::visit {

/// The pipework as a tree drawn to read: size, length, volume and where each section leads. To look at only;
/// what it shows stands in the list above it for a screen reader.
class PipeSketch : public QWidget {
    Q_OBJECT
  public:
    PipeSketch(const words::Words& words, QWidget* parent);
    void draw(const reg::VisitFile& file, const pipework::VolumeReport& volume);
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override { return sizeHint(); }

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    struct Line {
        QString above;
        QString below;
        double thickness = 2;
        bool underTest = true;
    };
    void paintSection(QPainter& painter, const DrawnSection& section) const;
    [[nodiscard]] double columnLeft(int column) const;
    [[nodiscard]] static double rowMiddle(int row);

    const words::Words& m_words;
    DrawnTree m_tree;
    std::vector<Line> m_lines;  // by index in the list
    QString m_meter;
};

}  // namespace hearth::ui::visit
