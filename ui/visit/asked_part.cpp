// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/visit/asked_part.h"

#include "ui/look/look.h"
#include "ui/shell/kit.h"
#include "ui/visit/wanted.h"

#include <algorithm>

namespace hearth::ui::visit {

using reg::Item;
using reg::ItemKind;

namespace {

constexpr std::size_t kShortChoices = 2;

/// Of six columns.
int spanOf(Item item) {
    const reg::ItemInfo& info = reg::infoOf(item);
    switch (info.kind) {
        case ItemKind::Number:
            return 2;
        case ItemKind::Date:
        case ItemKind::Time:
        case ItemKind::Instrument:
        case ItemKind::Text:
            return 3;
        case ItemKind::Choice:
        case ItemKind::YesNo:
            return info.choices.size() <= kShortChoices ? 3 : 6;
        case ItemKind::LongText:
            break;
    }
    return 6;
}

}  // namespace

AskedPart::AskedPart(const SheetContext& context, const PartRef& ref, QWidget* parent)
    : PartView(context, ref, parent), m_asked(itemsAskedOf(subject(), context.model.file())) {}

bool AskedPart::isUpToDate() const {
    const auto now = itemsAskedOf(subject(), model().file());
    const bool hasAll = std::all_of(now.begin(), now.end(), [&](Item item) {
        return std::binary_search(m_asked.begin(), m_asked.end(), item) ||
               find({item, std::nullopt, subject()}) != nullptr || !isInGroups(item);
    });
    return PartView::isUpToDate() && hasAll;
}

bool AskedPart::isInGroups(Item item) const {
    return std::any_of(m_groups.begin(), m_groups.end(), [&](const ItemGroup& group) {
        return std::find(group.items.begin(), group.items.end(), item) != group.items.end();
    });
}

void AskedPart::addGroups(std::span<const ItemGroup> groups) {
    m_groups.insert(m_groups.end(), groups.begin(), groups.end());
    for (const ItemGroup& group : groups) {
        const bool any = std::any_of(group.items.begin(), group.items.end(), [&](Item item) {
            return std::binary_search(m_asked.begin(), m_asked.end(), item);
        });
        if (any) {
            addSection(group);
        }
    }
}

void AskedPart::addSection(const ItemGroup& group) {
    Section section;
    if (*group.heading != '\0') {
        auto* heading = shell::headingText(tr(group.heading), this);
        heading->setContentsMargins(0, look::kGap, 0, 0);
        addWidget(heading);
        section.heading = heading;
    }
    shell::Fields* fields = addFields();
    section.grid = fields;
    for (const Item item : group.items) {
        if (std::binary_search(m_asked.begin(), m_asked.end(), item)) {
            section.fields.push_back(addItemOf(fields, subject(), item, spanOf(item)));
        }
    }
    m_sections.push_back(std::move(section));
}

bool AskedPart::isLacking(Item item) const {
    const auto& findings = model().findings();
    return std::any_of(findings.begin(), findings.end(), [&](const judging::Judged& judged) {
        return judged.subject == subject() && isWorthShowing(judged, model().file()) &&
               std::find(judged.lacking.begin(), judged.lacking.end(), item) != judged.lacking.end();
    });
}

/// Fields come as they are needed: the part is not made anew under the cursor.
void AskedPart::addRest() {
    std::vector<Item> wanted;
    for (const judging::Judged& judged : model().findings()) {
        wanted.insert(wanted.end(), judged.lacking.begin(), judged.lacking.end());
    }
    for (const reg::Entry& entry : model().file().entries) {
        if (entry.subject == subject()) {
            wanted.push_back(entry.item);
        }
    }
    bool added = false;
    for (const Item item : wanted) {
        const bool isOwn = reg::infoOf(item).subject == subject().kind && partOf(item) == ref().kind;
        const bool isThere = find({item, std::nullopt, subject()}) != nullptr;
        if (isOwn && !isThere && (isLacking(item) || model().file().find(subject(), item) != nullptr)) {
            m_sections.back().fields.push_back(addItemOf(m_rest, subject(), item, spanOf(item)));
            added = true;
        }
    }
    if (added) {
        Q_EMIT stopsChanged();
    }
}

void AskedPart::addMore() {
    auto* heading = shell::headingText(tr("For the findings"), this);
    heading->setContentsMargins(0, look::kGap, 0, 0);
    addWidget(heading);
    m_rest = addFields();
    m_sections.push_back({heading, m_rest, {}});
    m_more = new shell::KeyButton({}, shell::ButtonKind::Quiet, this);
    m_more->setObjectName(QStringLiteral("moreButton"));
    passByEnter(m_more);
    addWidget(m_more);
    connect(m_more, &QPushButton::clicked, this, &AskedPart::toggleMore);
}

bool AskedPart::isShown(const FieldKey& key) const {
    return PartView::isShown(key) || (key.subject == subject() && isLacking(*key.item)) ||
           (m_all && askingOf(*key.item, key.subject, model().file(), model().findings()) != Asking::Not);
}

void AskedPart::toggleMore() {
    if (m_more == nullptr || m_more->isHidden()) {
        return;
    }
    m_all = !m_all;
    refresh();
    Q_EMIT stopsChanged();
}

void AskedPart::refresh() {
    if (m_rest != nullptr) {
        addRest();
    }
    PartView::refresh();
    for (const Section& section : m_sections) {
        const bool any = std::any_of(section.fields.begin(), section.fields.end(),
                                     [](const SheetField* field) { return !field->editor()->isHidden(); });
        if (section.heading != nullptr) {
            section.heading->setVisible(any);
        }
        section.grid->setVisible(any);  // or each would leave its gap
    }
    const bool leftOut = std::any_of(fields().begin(), fields().end(), [&](const SheetField* field) {
        const FieldKey& key = field->key();
        return key.item && field->editor()->isHidden() &&
               askingOf(*key.item, key.subject, model().file(), model().findings()) == Asking::MayBeLeftOut;
    });
    if (m_more != nullptr) {
        m_more->setWords(m_all ? tr("Only what is asked") : tr("More to enter"));
        m_more->showKey(QKeySequence(Qt::CTRL | Qt::Key_E).toString(QKeySequence::NativeText));
        m_more->setAccessibleName(partTitle(ref(), model().file(), words()) + QStringLiteral(", ") +
                                  m_more->accessibleName());
        m_more->setVisible(m_all || leftOut);
    }
}

}  // namespace hearth::ui::visit
