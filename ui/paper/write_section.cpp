// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper/sections.h"

namespace hearth::ui::paper {

namespace {

constexpr int kWriteColumns = 6;
constexpr int kLeastSpan = 2;
constexpr double kWriteGutter = 4;
constexpr double kWriteLine = 6.6;  // a line for a hand, not for a typewriter
constexpr double kWriteGap = 1.2;
constexpr double kBox = 3.2;
constexpr double kBoxToLabel = 4.4;
constexpr double kBetweenTicks = 4;
constexpr double kTickLine = 5;

double writeWidth(int span, const Setting& setting) {
    const double column = (setting.width - kWriteGutter * (kWriteColumns - 1)) / kWriteColumns;
    return column * span + kWriteGutter * (span - 1);
}

/// Beside each other: each where it begins and how wide it is.
struct WritePlace {
    const record::WriteField* field = nullptr;
    double x = 0;
    double width = 0;
    int column = 0;
};

int writeSpan(const record::WriteField& field, const Setting& setting) {
    if (field.lines > 1) {
        return kWriteColumns;
    }
    double wanted = setting.type.widthOf(settable(field.caption), styles::kCaption);
    double ticks = 0;
    for (const std::string& tick : field.ticks) {
        ticks += kBoxToLabel + setting.type.widthOf(settable(tick), styles::kValue) + kBetweenTicks;
    }
    wanted = std::max(wanted, ticks - kBetweenTicks);
    int span = kLeastSpan;
    while (span < kWriteColumns && writeWidth(span, setting) < wanted) {
        ++span;
    }
    return span;
}

TextItem inColumn(TextItem line, const QPointF& at, int column) {
    line.column = column;
    line.origin += at;
    line.box.translate(at);
    return line;
}

/// Boxes with their answers, line by line; gives the height they take.
double putTicks(Slice& slice, const WritePlace& place, const Setting& setting) {
    double x = 0;
    double y = 0;
    double taken = place.field->ticks.empty() ? 0 : kTickLine;
    for (const std::string& tick : place.field->ticks) {
        const QString label = settable(tick);
        const double most = place.width - kBoxToLabel;
        const double width = std::min(setting.type.widthOf(label, styles::kValue), most);
        if (x > 0 && x + kBoxToLabel + width > place.width) {
            x = 0;
            y = taken;
            taken += kTickLine;
        }
        const double down = (styles::kValue.lineHeight() - kBox) / 2;
        slice.items.emplace_back(FrameItem{QRectF(place.x + x, y + down, kBox, kBox), 0.25, look::Role::Ink});
        double lineY = y;
        for (TextItem& line : setting.type.set(label, styles::kValue, most)) {
            slice.items.emplace_back(
                inColumn(std::move(line), {place.x + x + kBoxToLabel, lineY}, place.column));
            lineY += styles::kValue.lineHeight();
        }
        taken = std::max(taken, lineY + kTickLine - styles::kValue.lineHeight());
        x += kBoxToLabel + width + kBetweenTicks;
    }
    return taken;
}

Group writeRow(const std::vector<WritePlace>& row, const Setting& setting) {
    std::vector<Cell> captions;
    for (const WritePlace& place : row) {
        captions.push_back(
            {setting.type.set(settable(place.field->caption), styles::kCaption, place.width), place.x});
    }
    Group group;
    group.slices = sideBySide(std::move(captions), styles::kCaption.lineHeight());
    Slice room;
    for (const WritePlace& place : row) {
        double height = putTicks(room, place, setting);
        for (int line = 0; line < place.field->lines; ++line) {
            height += kWriteLine;
            room.items.emplace_back(
                RuleItem{{place.x, height - 0.4}, place.width, 0.18, look::Role::SoftInk});
        }
        room.height = std::max(room.height, height);
    }
    group.slices.push_back(std::move(room));
    return group;
}

}  // namespace

void addWriteIn(std::vector<Group>& groups, const record::WriteIn& block, const Setting& setting) {
    addSectionTitle(groups, block.title, setting);
    std::vector<std::vector<WritePlace>> rows;
    int next = kWriteColumns;
    for (const record::WriteField& field : block.fields) {
        const int span = writeSpan(field, setting);
        if (next + span > kWriteColumns) {
            rows.emplace_back();
            next = 0;
        }
        const double x = next == 0 ? 0 : writeWidth(next, setting) + kWriteGutter;
        rows.back().push_back({&field, x, writeWidth(span, setting), static_cast<int>(rows.back().size())});
        next += span;
    }
    bool isFirst = true;
    for (const auto& row : rows) {
        Group group = writeRow(row, setting);
        group.spaceBefore = !isFirst ? kWriteGap : block.title.empty() ? kSectionGap : 0;
        groups.push_back(std::move(group));
        isFirst = false;
    }
}

}  // namespace hearth::ui::paper
