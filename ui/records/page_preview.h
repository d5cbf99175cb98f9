// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/paper/paper.h"

#include <QWidget>

#include <optional>

namespace hearth::ui::records {

/// The pages of a record one below the other, painted by the layout that paper and PDF have. A stop of the
/// Tab key, so that the arrows scroll it and a screen reader reads it.
class PagePreview : public QWidget {
    Q_OBJECT
  public:
    explicit PagePreview(QWidget* parent);
    void show(const record::Document& document, const paper::PageOptions& options);
    void clear();
    [[nodiscard]] const std::optional<paper::Layout>& pages() const { return m_layout; }
    [[nodiscard]] paper::Stamp stamp() const { return m_stamp; }

  protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

  private:
    [[nodiscard]] double scale() const;
    [[nodiscard]] QRectF box(int page) const;
    void fitHeight();

    std::optional<paper::Layout> m_layout;
    paper::Stamp m_stamp = paper::Stamp::None;
};

}  // namespace hearth::ui::records
