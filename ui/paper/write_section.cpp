// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper/sections.h"

#include <memory>
#include <span>

namespace hearth::ui::paper {

namespace {

constexpr int kWriteColumns = 6;
constexpr int kLeastSpan = 2;
constexpr double kWriteGutter = 4;
constexpr double kWriteLine = 6.6;  // a line for a hand, not for a typewriter
constexpr double kWriteGap = 1.0;
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
    int span = field.wide ? kWriteColumns / 2 : kLeastSpan;
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

// Answers that several questions share stand once, above a column of boxes.
constexpr std::size_t kLeastShared = 3;
constexpr double kQuestionShare = 0.42;
constexpr double kSharedRow = 5.2;

/// How many of the fields from `first` have the same answers and nothing else to write.
std::size_t sharedFrom(const std::vector<record::WriteField>& fields, std::size_t first) {
    std::size_t count = 0;
    while (first + count < fields.size() && fields[first + count].lines == 0 &&
           fields[first + count].ticks == fields[first].ticks) {
        ++count;
    }
    return count;
}

std::vector<Group> sharedRows(std::span<const record::WriteField> fields, const Setting& setting) {
    const auto& ticks = fields.front().ticks;
    const double from = setting.width * kQuestionShare;
    const double column = (setting.width - from) / static_cast<double>(ticks.size());
    std::vector<Cell> heads;
    for (std::size_t i = 0; i < ticks.size(); ++i) {
        heads.push_back({setting.type.set(settable(ticks[i]), styles::kCaption, column - kWriteGutter / 2),
                         from + column * static_cast<double>(i)});
    }
    Group head;
    head.slices = sideBySide(std::move(heads), styles::kCaption.lineHeight());
    head.slices.push_back({0.7, {RuleItem{{0, 0.5}, setting.width, 0.18, look::Role::SoftInk}}});
    head.staysWithNext = true;
    const auto repeated = std::make_shared<const Group>(head);
    std::vector<Group> groups{std::move(head)};
    for (const record::WriteField& field : fields) {
        Group row;
        row.head = repeated;
        row.slices = slicesOf(setting.type.set(settable(field.caption), styles::kValue, from - kWriteGutter),
                              styles::kValue);
        if (row.slices.empty()) {
            row.slices.push_back(gap(styles::kValue.lineHeight()));
        }
        for (std::size_t i = 0; i < ticks.size(); ++i) {
            row.slices.front().items.emplace_back(FrameItem{
                QRectF(from + column * static_cast<double>(i), 0.4, kBox, kBox), 0.25, look::Role::Ink});
        }
        const double rest = std::max(0.3, kSharedRow - row.height());
        row.slices.push_back({rest, {RuleItem{{0, rest - 0.12}, setting.width, 0.12, look::Role::Line}}});
        groups.push_back(std::move(row));
    }
    return groups;
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
    bool isFirst = true;
    const auto add = [&](Group group) {
        group.spaceBefore = !isFirst ? kWriteGap : block.title.empty() ? kSectionGap : 0;
        groups.push_back(std::move(group));
        isFirst = false;
    };
    std::vector<WritePlace> row;
    int next = 0;
    const auto finish = [&] {
        if (!row.empty()) {
            // A line reaches to the end of its row.
            WritePlace& last = row.back();
            last.width = last.field->lines > 0 ? setting.width - last.x : last.width;
            add(writeRow(row, setting));
        }
        row.clear();
        next = 0;
    };
    for (std::size_t i = 0; i < block.fields.size(); ++i) {
        const record::WriteField& field = block.fields[i];
        if (const std::size_t shared = sharedFrom(block.fields, i); shared >= kLeastShared) {
            finish();
            for (Group& group : sharedRows(std::span(block.fields).subspan(i, shared), setting)) {
                const bool isHead = group.staysWithNext;
                add(std::move(group));
                groups.back().spaceBefore = isHead ? groups.back().spaceBefore : 0;
            }
            i += shared - 1;
            continue;
        }
        const int span = writeSpan(field, setting);
        if (next + span > kWriteColumns) {
            finish();
        }
        const double x = next == 0 ? 0 : writeWidth(next, setting) + kWriteGutter;
        row.push_back({&field, x, writeWidth(span, setting), static_cast<int>(row.size())});
        next += span;
    }
    finish();
}

}  // namespace hearth::ui::paper
