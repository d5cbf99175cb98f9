// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper/diagram.h"

#include <algorithm>
#include <map>
#include <utility>

namespace hearth::ui::paper {

namespace {

// Millimetres.
constexpr double kStartWidth = 21;
constexpr double kLeastColumn = 25;  // two words of the smallest print beside each other
constexpr double kMostColumn = 58;
constexpr double kPipeGap = 1.8;  // between a pipe's beginning and its text
constexpr double kEndGap = 2.4;
constexpr double kPad = 0.5;
constexpr double kRowGap = 1.4;
constexpr double kEndMark = 2.2;
constexpr double kBoxLine = 0.3;
constexpr double kThinnest = 0.45;
constexpr double kThickest = 1.7;

constexpr const TextStyle& kAbove = styles::kCell;
constexpr const TextStyle& kBelow = styles::kCaption;

int columnsOf(const record::Diagram& diagram) {
    int columns = 0;
    for (const auto& section : diagram.sections) {
        columns = std::max(columns, section.column + 1);
    }
    return columns;
}

double linesHeight(const std::vector<TextItem>& lines, const TextStyle& style) {
    return static_cast<double>(lines.size()) * style.lineHeight();
}

double pipeThickness(int diameter) {
    constexpr double kMillimetresToOne = 22;
    return std::clamp(diameter / kMillimetresToOne, kThinnest, kThickest);
}

/// A section with its texts set.
struct SetSection {
    const record::DiagramSection* section = nullptr;
    std::vector<TextItem> above;
    std::vector<TextItem> below;
};

/// One row of the tree: its sections, what hangs at its end, and the branches that pass it on the way down.
struct DiagramRow {
    std::vector<SetSection> sections;
    std::vector<std::vector<TextItem>> end;  // one text after another
    std::vector<double> endHeights;
    std::vector<const record::DiagramSection*> passing;  // drawn from its top to its bottom
    std::vector<const record::DiagramSection*> leaving;  // from its pipe down
    double over = 0;                                     // above the middle of its pipe
    double under = 0;

    [[nodiscard]] double endHeight() const {
        double height = 0;
        for (const double one : endHeights) {
            height += one;
        }
        return height;
    }
};

class DiagramSetter {
  public:
    DiagramSetter(const record::Diagram& diagram, const TypeSetter& type, double width)
        : m_diagram(diagram), m_type(type), m_width(width) {
        const int fit = static_cast<int>((width - kStartWidth) / kLeastColumn) - 1;  // one for the ends
        m_columns = std::clamp(columnsOf(diagram), 1, std::max(1, fit));
        m_pitch = std::min(kMostColumn, (width - kStartWidth) / (m_columns + 1));
    }

    std::vector<Slice> rows() {
        collect();
        std::vector<Slice> slices;
        for (auto& [number, row] : m_rows) {
            measure(row, slices.empty());
            slices.push_back(draw(row, slices.empty()));
        }
        addRest(slices);
        return slices;
    }

  private:
    [[nodiscard]] bool isShown(const record::DiagramSection& section) const {
        return section.column < m_columns;
    }
    [[nodiscard]] double left(int column) const { return kStartWidth + m_pitch * column; }

    void collect() {
        for (const auto& section : m_diagram.sections) {
            if (isShown(section)) {
                const double room = m_pitch - 2 * kPipeGap;
                const std::string above =
                    section.number.empty() ? section.above : section.number + "  " + section.above;
                m_rows[section.row].sections.push_back({&section, m_type.set(settable(above), kAbove, room),
                                                        m_type.set(settable(section.below), kBelow, room)});
                addEnd(section);
            }
        }
        for (const auto& section : m_diagram.sections) {
            if (!isShown(section) || section.row == section.fromRow) {
                continue;
            }
            for (auto& [number, row] : m_rows) {
                if (number == section.fromRow) {
                    row.leaving.push_back(&section);
                } else if (number > section.fromRow && number < section.row) {
                    row.passing.push_back(&section);
                }
            }
        }
    }

    void addEnd(const record::DiagramSection& section) {
        std::vector<std::string> texts = section.end;
        if (!section.isEnd) {
            if (section.column + 1 < m_columns) {
                return;
            }
            texts = {m_diagram.goesOn};
        }
        auto& row = m_rows[section.row];
        const double room = m_width - left(section.column + 1) - kEndGap;
        for (std::size_t i = 0; i < texts.size(); ++i) {
            const TextStyle& style = i == 0 ? styles::kTotal : kAbove;
            auto lines = m_type.set(settable(texts[i]), style, room);
            row.endHeights.push_back(linesHeight(lines, style));
            row.end.push_back(std::move(lines));
        }
    }

    void measure(DiagramRow& row, bool isFirst) {
        const double endHalf = row.endHeight() / 2;
        row.over = endHalf;
        row.under = endHalf;
        for (const auto& set : row.sections) {
            const double half = pipeThickness(set.section->diameter) / 2;
            row.over = std::max(row.over, linesHeight(set.above, kAbove) + half + kPad);
            row.under = std::max(row.under, linesHeight(set.below, kBelow) + half + kPad);
        }
        if (isFirst) {
            m_start = m_type.set(settable(m_diagram.start), kBelow, kStartWidth - 2 * kPad - 2 * kPad);
            const double half = linesHeight(m_start, kBelow) / 2 + 2 * kPad;
            row.over = std::max(row.over, half);
            row.under = std::max(row.under, half);
        }
        row.under += kRowGap;
    }

    static look::Role roleOf(const record::DiagramSection& section) {
        if (!section.isTested) {
            return look::Role::SoftInk;
        }
        return section.isOnWorst ? look::Role::Key : look::Role::Ink;
    }

    static LineItem pipe(const record::DiagramSection& section, QPointF from, QPointF to) {
        return {{from, to},
                pipeThickness(section.diameter),
                roleOf(section),
                section.isTested ? Stroke::Solid : Stroke::Dashed};
    }

    Slice draw(DiagramRow& row, bool isFirst) {
        Slice slice;
        slice.height = row.over + row.under;
        for (const auto* section : row.passing) {
            const double x = left(section->column);
            slice.items.emplace_back(pipe(*section, {x, 0}, {x, slice.height}));
        }
        for (const auto* section : row.leaving) {
            const double x = left(section->column);
            slice.items.emplace_back(pipe(*section, {x, row.over}, {x, slice.height}));
        }
        if (isFirst) {
            drawStart(slice, row.over);
        }
        for (auto& set : row.sections) {
            drawSection(slice, set, row.over);
        }
        drawEnd(slice, row);
        return slice;
    }

    void drawStart(Slice& slice, double y) {
        const double height = linesHeight(m_start, kBelow) + 2 * kPad;
        const QRectF box(0, y - height / 2, kStartWidth, height);
        slice.items.emplace_back(FrameItem{box, kBoxLine, look::Role::Ink});
        double top = box.top() + kPad;
        for (auto& line : m_start) {
            centre(line, kStartWidth - 4 * kPad);
            slice.items.push_back(moved(std::move(line), {2 * kPad, top}));
            top += kBelow.lineHeight();
        }
    }

    void drawSection(Slice& slice, SetSection& set, double y) {
        const auto& section = *set.section;
        const double from = left(section.column);
        const double half = pipeThickness(section.diameter) / 2;
        if (section.row != section.fromRow) {
            slice.items.emplace_back(pipe(section, {from, 0}, {from, y}));
        }
        slice.items.emplace_back(pipe(section, {from, y}, {left(section.column + 1), y}));
        double top = y - half - kPad - linesHeight(set.above, kAbove);
        const auto put = [&](std::vector<TextItem>& lines, const TextStyle& style) {
            for (auto& line : lines) {
                line.column = section.column + 1;
                slice.items.push_back(moved(std::move(line), {from + kPipeGap, top}));
                top += style.lineHeight();
            }
        };
        put(set.above, kAbove);
        top = y + half + kPad;
        put(set.below, kBelow);
    }

    void drawEnd(Slice& slice, DiagramRow& row) {
        const auto* last = row.sections.back().section;
        const double x = left(last->column + 1);
        if (last->isEnd) {
            const double size = std::max(kEndMark, 1.6 * pipeThickness(last->diameter));
            slice.items.emplace_back(
                MarkItem{{x, row.over}, size, last->isTested ? Mark::Disc : Mark::Ring, roleOf(*last)});
        }
        double top = row.over - row.endHeight() / 2;
        for (std::size_t i = 0; i < row.end.size(); ++i) {
            const TextStyle& style = i == 0 ? styles::kTotal : kAbove;
            for (auto& line : row.end[i]) {
                line.column = last->column + 2;
                slice.items.push_back(moved(std::move(line), {x + kEndGap, top}));
                top += style.lineHeight();
            }
        }
    }

    /// " (after 5)".
    [[nodiscard]] std::string feederOf(const record::DiagramSection& section) const {
        const auto& all = m_diagram.sections;
        const auto at = std::find_if(all.begin(), all.end(), [&](const record::DiagramSection& one) {
            return one.column + 1 == section.column && one.row == section.fromRow;
        });
        if (at == all.end()) {
            return {};
        }
        const QString after = QString::fromStdString(m_diagram.after).arg(QString::fromStdString(at->number));
        return " (" + after.toStdString() + ")";
    }

    /// What is too deep to be drawn, line by line.
    void addRest(std::vector<Slice>& slices) {
        for (const auto& section : m_diagram.sections) {
            if (isShown(section)) {
                continue;
            }
            std::string text = section.number + feederOf(section) + "  " + section.above;
            const auto add = [&](const std::string& more) { text += more.empty() ? "" : " \u00B7 " + more; };
            add(section.below);
            std::for_each(section.end.begin(), section.end.end(), add);
            for (auto& line : m_type.set(settable(text), kAbove, m_width)) {
                Slice slice;
                slice.height = kAbove.lineHeight();
                slice.items.emplace_back(std::move(line));
                slices.push_back(std::move(slice));
            }
        }
    }

    const record::Diagram& m_diagram;
    const TypeSetter& m_type;
    double m_width;
    int m_columns = 1;
    double m_pitch = kLeastColumn;
    std::map<int, DiagramRow> m_rows;  // by the tree's row
    std::vector<TextItem> m_start;
};

}  // namespace

std::vector<Slice> diagramRows(const record::Diagram& diagram, const TypeSetter& type, double width) {
    return diagram.sections.empty() ? std::vector<Slice>() : DiagramSetter(diagram, type, width).rows();
}

double wholeDiagramWidth(const record::Diagram& diagram) {
    return kStartWidth + kLeastColumn * (columnsOf(diagram) + 1) + 0.01;
}

SetDiagram setDiagram(const record::Diagram& diagram, const TypeSetter& type, double width) {
    SetDiagram set;
    for (Slice& slice : diagramRows(diagram, type, width)) {
        for (Item& item : slice.items) {
            set.items.push_back(moved(std::move(item), {0, set.height}));
        }
        set.height += slice.height;
    }
    return set;
}

}  // namespace hearth::ui::paper
