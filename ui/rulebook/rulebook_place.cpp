// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/rulebook/rulebook_place.h"

#include "ui/rulebook/entry_sheet.h"
#include "ui/shell/kit.h"
#include "ui/shell/line_list.h"
#include "ui/shell/rule_answer.h"

#include <QKeyEvent>

#include <algorithm>

namespace hearth::ui::rules {

using rulebook::Entry;
using rulebook::RuleBook;
using rulebook::RuleKey;
using words::qstring;

namespace {

/// One line's key. A rule may stand several times, each with its own dates.
QString keyText(const Entry& entry) {
    const RuleKey& key = entry.key;
    return QStringLiteral("%1/%2/%3/%4")
        .arg(shell::coded(rulebook::ruleText(key.rule)), shell::coded(rulebook::editionText(key.edition)),
             key.gas ? shell::coded(rulebook::gasText(*key.gas)) : QString(),
             entry.appliesFrom ? qstring(calendar::isoText(*entry.appliesFrom)) : QString());
}

shell::Line lineOf(const Entry& entry, const words::Words& words) {
    QStringList where;
    if (entry.key.edition != rulebook::Edition::General) {
        where << words.edition(entry.key.edition);
    }
    if (entry.key.gas) {
        where << words.gas(*entry.key.gas);
    }
    if (const QString times = shell::ruleTimes(words, entry);
        !times.isEmpty() && entry.key.edition == rulebook::Edition::General) {  // an edition's are known
        where << times;
    }
    shell::Line line;
    line.key = keyText(entry);
    line.title = words.rule(entry.key.rule);
    line.detail = where.join(QStringLiteral(" · "));
    line.right = words.ruleValue(entry);
    line.rightDetail = shell::ruleStanding(words, entry);
    return line;
}

/// Everything that stands on an entry's sheet, for the search.
QString allText(const Entry& entry, const words::Words& words) {
    const shell::Line line = lineOf(entry, words);
    return QStringList{line.title,
                       line.detail,
                       line.right,
                       line.rightDetail,
                       qstring(entry.standard),
                       qstring(entry.clause),
                       qstring(entry.source),
                       qstring(entry.doubt),
                       qstring(entry.confirmedBy)}
        .join(u' ');
}

}  // namespace

RuleBookPlace::RuleBookPlace(const shell::Context& context, QWidget* parent)
    : Place(parent), m_context(context) {
    setObjectName(QStringLiteral("ruleBookPlace"));
}

void RuleBookPlace::build() {
    m_list = new shell::LineList(tr("Rules"), {}, this);
    m_list->setObjectName(QStringLiteral("rulesList"));
    m_sheet = new EntrySheet(m_context, this);
    shell::besideSheet(this, {m_list}, m_sheet);
    connect(m_list, &shell::LineList::moved, this, &RuleBookPlace::show);
    connect(m_list, &shell::LineList::opened, this, [this] { m_sheet->takeFocus(); });
    connect(m_sheet, &EntrySheet::saved, this, [this] {
        fillList();
        show(m_list->currentRow());
    });
    shell::orderTabs(this);
}

bool RuleBookPlace::isFound(const Entry& entry) const {
    const QString text = allText(entry, m_context.words);
    const QStringList wanted = m_search.split(u' ', Qt::SkipEmptyParts);
    return std::all_of(wanted.begin(), wanted.end(),
                       [&](const QString& word) { return text.contains(word, Qt::CaseInsensitive); });
}

void RuleBookPlace::fillList() {
    const auto book = m_context.store.ruleBook();
    m_entries.clear();
    if (!book) {
        m_list->setEmptyText(m_context.words.error(book.error()));
        m_list->setLines({});
        return;
    }
    std::vector<shell::Line> lines;
    for (const Entry& entry : book->entries()) {
        if (isFound(entry)) {
            m_entries.push_back(entry);
            lines.push_back(lineOf(entry, m_context.words));
        }
    }
    m_list->setEmptyText(tr("Nothing found for “%1”.").arg(m_search));
    m_list->setLines(std::move(lines));
}

void RuleBookPlace::refresh() {
    if (m_list == nullptr) {
        build();
    }
    fillList();
    if (m_list->currentRow() < 0 && m_list->count() > 0) {
        m_list->setCurrentRow(0);
    }
    show(m_list->currentRow());
}

void RuleBookPlace::show(int row) {
    if (row < 0 || row >= static_cast<int>(m_entries.size())) {
        m_sheet->showNothing();
        return;
    }
    m_sheet->show(m_entries[static_cast<std::size_t>(row)]);
}

void RuleBookPlace::takeFocus() {
    m_list->setFocus(Qt::OtherFocusReason);
}

void RuleBookPlace::search(const QString& text) {
    m_search = text;
    refresh();
}

void RuleBookPlace::openRule(const RuleKey& key) {
    m_search.clear();
    fillList();
    const RuleBook book(m_entries);
    const auto* meant = book.meantOn(key, m_context.clock.today("Europe/London"));
    if (meant != nullptr && m_list->setCurrentKey(keyText(*meant))) {
        m_list->scrollTo(m_list->currentIndex());
    }
    show(m_list->currentRow());
    m_sheet->takeFocus();
}

void RuleBookPlace::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape) {
        m_list->setFocus(Qt::OtherFocusReason);
        return;
    }
    Place::keyPressEvent(event);
}

}  // namespace hearth::ui::rules
