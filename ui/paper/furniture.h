// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/document.h"
#include "ui/paper/logo.h"
#include "ui/paper/page.h"
#include "ui/paper/paper.h"
#include "ui/paper/type_setter.h"

#include <vector>

/// What stands around the record on each page: banner and stamp, head, foot, and the proof at the foot of the
/// last page.
namespace hearth::ui::paper {

/// Millimetres. The sides leave room for filing holes.
struct Sheet {
    QSizeF size;
    double left = 16;
    double right = 16;
    double top = 11;
    double bottom = 10;

    [[nodiscard]] double width() const { return size.width() - left - right; }
};

[[nodiscard]] Sheet sheetOf(PaperSize size);
/// One that begins with a letter's head.
[[nodiscard]] bool isLetter(const record::Document& document);
/// The same with a letter's wider margins, where the document is one.
[[nodiscard]] Sheet sheetFor(const record::Document& document, PaperSize size);

class Furniture {
  public:
    Furniture(const record::Document& document, const PageOptions& options, const TypeSetter& type,
              const Sheet& sheet);

    /// Where the record's text may stand, from the top of the page.
    [[nodiscard]] double bodyTop(bool isFirst) const;
    [[nodiscard]] double bodyBottom() const;
    /// Banner, stamp and head of a page; its foot.
    [[nodiscard]] std::vector<Item> head(int index, int count) const;
    [[nodiscard]] std::vector<Item> foot() const;

    /// Number, revision and digest in words and as a square code, at the right of the last page; no size
    /// where there is no digest.
    [[nodiscard]] double proofWidth() const;
    [[nodiscard]] double proofHeight() const;
    [[nodiscard]] std::vector<Item> proof(double top) const;

  private:
    /// Adds text at (x, y), a column of `width`; gives the y below it.
    enum class Side { Left, Right };
    double put(std::vector<Item>& items, const QString& text, const TextStyle& style, const QRectF& column,
               Side side = Side::Left) const;
    double putBand(std::vector<Item>& items) const;
    double putFirstHead(std::vector<Item>& items, double y, const QString& page) const;
    double putLetterHead(std::vector<Item>& items, double y, const QString& page) const;
    double putRunningHead(std::vector<Item>& items, double y, const QString& page) const;
    [[nodiscard]] QString pageText(int index, int count) const;
    [[nodiscard]] QString revisionText() const;
    [[nodiscard]] QStringList numberParts() const;
    [[nodiscard]] QString stampText() const;

    const record::Document& m_document;
    const PageOptions& m_options;
    const TypeSetter& m_type;
    Sheet m_sheet;
    HeadLogo m_logo;
    double m_firstTop = 0;
    double m_runningTop = 0;
    double m_footTop = 0;
};

}  // namespace hearth::ui::paper
