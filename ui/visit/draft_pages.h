// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/paper/paper.h"

#include <QWidget>

#include <optional>

namespace hearth::ui::visit {

/// The record as it would stand on paper now, page under page, as wide as there is room.
class DraftPages : public QWidget {
    Q_OBJECT
  public:
    explicit DraftPages(QWidget* parent);
    void setDocument(const record::Document& document);
    [[nodiscard]] int pageCount() const { return m_layout ? m_layout->pageCount() : 0; }
    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override;
    [[nodiscard]] QSize sizeHint() const override { return {480, heightForWidth(480)}; }

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    [[nodiscard]] double pageHeight(int width) const;
    std::optional<paper::Layout> m_layout;
};

}  // namespace hearth::ui::visit
