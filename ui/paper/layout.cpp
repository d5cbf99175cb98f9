// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper/layout.h"

#include "ui/paper/flow.h"
#include "ui/paper/furniture.h"
#include "ui/paper/sections.h"

#include <algorithm>

namespace hearth::ui::paper {

namespace {

constexpr double kAboveProof = 4;

int columnOf(const Item& item) {
    const auto* text = std::get_if<TextItem>(&item);
    return text != nullptr ? text->column : 0;
}

/// A line without letters (two line breaks in a remark) keeps its height; nothing of it is placed.
bool isBlank(const Item& item) {
    const auto* text = std::get_if<TextItem>(&item);
    return text != nullptr && text->text.isEmpty();
}

/// Room for the proof is laid out with the text, so that what stands last goes over with it: a page never
/// holds a proof alone where something short could have kept it company.
void reserveProof(std::vector<Group>& groups, double height) {
    if (height <= 0) {
        return;
    }
    if (!groups.empty()) {
        groups.back().staysWithNext = true;
    }
    Group room;
    room.spaceBefore = kAboveProof;
    room.slices.push_back(gap(height));
    groups.push_back(std::move(room));
}

/// A group's items on this page, in the order of reading: down each column, not line by line across them.
/// That is the order in which a PDF's text is copied or read aloud.
void appendGroup(std::vector<Item>& to, std::vector<Placed>::const_iterator from,
                 std::vector<Placed>::const_iterator end, const QPointF& corner) {
    std::vector<Item> items;
    for (; from != end; ++from) {
        for (const Item& item : from->slice->items) {
            if (!isBlank(item)) {
                items.push_back(moved(item, corner + QPointF(0, from->y)));
            }
        }
    }
    std::stable_sort(items.begin(), items.end(),
                     [](const Item& a, const Item& b) { return columnOf(a) < columnOf(b); });
    append(to, std::move(items));
}

void appendBody(std::vector<Item>& to, const FlowPage& flowed, const QPointF& corner) {
    auto from = flowed.slices.begin();
    while (from != flowed.slices.end()) {
        const auto end = std::find_if(from, flowed.slices.end(),
                                      [from](const Placed& placed) { return placed.group != from->group; });
        appendGroup(to, from, end, corner);
        from = end;
    }
}

}  // namespace

LaidOut layOut(const record::Document& document, const PageOptions& options) {
    const TypeSetter type;
    const Sheet sheet = sheetFor(document, sizeOf(document, options));
    const Furniture furniture(document, options, type, sheet);
    std::vector<Group> groups =
        groupsOf(document, {type, sheet.width(), furniture.proofWidth(), furniture.proofHeight(),
                            furniture.bodyTop(true), isLetter(document) ? styles::kLetter : styles::kText});
    const bool besideSignatures = !document.blocks.empty() &&
                                  std::holds_alternative<record::Signatures>(document.blocks.back()) &&
                                  !groups.empty();
    if (!besideSignatures) {
        reserveProof(groups, furniture.proofHeight());
    }
    const double bottom = furniture.bodyBottom();
    const BodyHeights heights{bottom - furniture.bodyTop(true), bottom - furniture.bodyTop(false)};
    const std::vector<FlowPage> flowed = flow(groups, heights);

    // Beside the last signature, which it was given the height for; else at the foot of the page.
    const double lastTop = furniture.bodyTop(flowed.size() == 1);
    const double proofTop = besideSignatures
                                ? std::max(lastTop, lastTop + flowed.back().used - furniture.proofHeight())
                                : bottom - furniture.proofHeight();

    LaidOut laid;
    laid.size = sheet.size;
    const int count = static_cast<int>(flowed.size());
    for (int index = 0; index < count; ++index) {
        Page page;
        page.items = furniture.head(index, count);
        appendBody(page.items, flowed[static_cast<std::size_t>(index)],
                   QPointF(sheet.left, furniture.bodyTop(index == 0)));
        if (index == count - 1) {
            append(page.items, furniture.proof(proofTop));
        }
        append(page.items, furniture.foot());
        laid.pages.push_back(std::move(page));
    }
    laid.missingLetters = type.missingLetters();
    return laid;
}

struct Layout::Impl {
    LaidOut laid;
};

Layout::Layout(const record::Document& document, const PageOptions& options)
    : m_impl(std::make_unique<Impl>(Impl{layOut(document, options)})) {}
Layout::~Layout() = default;
Layout::Layout(Layout&&) noexcept = default;
Layout& Layout::operator=(Layout&&) noexcept = default;

int Layout::pageCount() const {
    return static_cast<int>(m_impl->laid.pages.size());
}

QSizeF Layout::pageSize() const {
    return m_impl->laid.size;
}

void Layout::paint(QPainter& painter, int index) const {
    paintPage(painter, m_impl->laid.pages.at(static_cast<std::size_t>(index)));
}

std::vector<Layout::Run> Layout::runs(int index) const {
    std::vector<Run> runs;
    for (const Item& item : m_impl->laid.pages.at(static_cast<std::size_t>(index)).items) {
        if (const auto* text = std::get_if<TextItem>(&item)) {
            runs.push_back({text->text, text->box});
        }
    }
    return runs;
}

QString Layout::missingLetters() const {
    return m_impl->laid.missingLetters;
}

}  // namespace hearth::ui::paper
