// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/records/records_place.h"

#include "ui/records/collecting.h"
#include "ui/records/proof_check.h"
#include "ui/records/record_sheet.h"
#include "ui/shell/exporting.h"
#include "ui/shell/kit.h"
#include "ui/shell/line_list.h"

#include <QKeyEvent>

namespace hearth::ui::records {

using words::qstring;

namespace {

constexpr int kShown = 500;

shell::Line lineOf(const store::RecordLine& record, const words::Words& words) {
    shell::Line line;
    line.key = qstring(record.id.text());
    if (!record.letGo) {
        line.outcome = record.outcome;
    }
    line.title = record.header.revision > 1 ? RecordsPlace::tr("%1, revision %2")
                                                  .arg(qstring(record.header.record))
                                                  .arg(record.header.revision)
                                            : qstring(record.header.record);
    line.detail = qstring(record.address);
    Instant issued{};
    line.right = parseInstant(record.header.issuedAt, issued) ? shell::dayOf(words, issued) : QString();
    line.rightDetail = record.letGo          ? RecordsPlace::tr("erased")
                       : record.voided       ? RecordsPlace::tr("void")
                       : record.supersededBy ? RecordsPlace::tr("superseded")
                                             : words.outcome(record.outcome);
    return line;
}

}  // namespace

RecordsPlace::RecordsPlace(const shell::Context& context, QWidget* parent)
    : Place(parent), m_context(context) {
    setObjectName(QStringLiteral("recordsPlace"));
}

void RecordsPlace::build() {
    m_list = new shell::LineList(tr("Issued records"), {}, this);
    m_list->setObjectName(QStringLiteral("recordsList"));
    m_sheet = new RecordSheet(m_context, this);
    auto* check = new shell::KeyButton(tr("Check a record…"), QKeySequence(Qt::CTRL | Qt::Key_H),
                                       shell::ButtonKind::Plain, this);
    check->setObjectName(QStringLiteral("checkRecordButton"));
    connect(check, &QPushButton::clicked, this, &RecordsPlace::check);
    auto* collect =
        new shell::KeyButton(tr("Write or print several…"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_S),
                             shell::ButtonKind::Plain, this);
    collect->setObjectName(QStringLiteral("collectButton"));
    connect(collect, &QPushButton::clicked, this, [this] { collectRecords(m_context, m_search, this); });
    auto* write = shell::exportButton({exchange::ListKind::Records}, m_context, this);
    shell::besideSheet(this, {m_list, check, collect, write}, m_sheet);
    connect(m_list, &shell::LineList::moved, this, &RecordsPlace::show);
    connect(m_list, &shell::LineList::opened, this, [this] { m_sheet->takeFocus(); });
    connect(m_sheet, &RecordSheet::issued, this, &RecordsPlace::openRecord);
    connect(m_sheet, &RecordSheet::changed, this, &RecordsPlace::refresh);
    shell::orderTabs(this);
}

void RecordsPlace::refresh() {
    if (m_list == nullptr) {
        build();
    }
    fillList();
    if (m_list->currentRow() < 0 && m_list->count() > 0) {
        m_list->setCurrentRow(0);
    }
    show(m_list->currentRow());
}

void RecordsPlace::fillList() {
    const auto found = m_context.store.records(m_search.toStdString(), kShown);
    m_ids.clear();
    if (!found) {
        m_list->setEmptyText(m_context.words.error(found.error()));
        m_list->setLines({});
        return;
    }
    std::vector<shell::Line> lines;
    for (const auto& record : *found) {
        m_ids.push_back(record.id);
        lines.push_back(lineOf(record, m_context.words));
    }
    if (static_cast<int>(lines.size()) == kShown) {
        m_context.navigator.say(tr("The first %1 are shown: search to see others.").arg(kShown));
    }
    m_list->setEmptyText(m_search.isEmpty() ? tr("No record has been issued yet.")
                                            : tr("Nothing found for “%1”.").arg(m_search));
    m_list->setLines(std::move(lines));
}

void RecordsPlace::show(int row) {
    if (row < 0 || row >= static_cast<int>(m_ids.size())) {
        m_sheet->showNothing();
        return;
    }
    m_sheet->show(m_ids[static_cast<std::size_t>(row)]);
}

void RecordsPlace::takeFocus() {
    m_list->setFocus(Qt::OtherFocusReason);
}

void RecordsPlace::search(const QString& text) {
    m_search = text;
    refresh();
}

void RecordsPlace::openRecord(store::RecordId id) {
    m_search.clear();
    fillList();
    m_list->setCurrentKey(qstring(id.text()));
    m_sheet->show(id);
    m_sheet->takeFocus();
}

void RecordsPlace::check() {
    if (const auto meant = checkRecord(m_context, this)) {
        openRecord(*meant);
    }
}

void RecordsPlace::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape) {
        m_list->setFocus(Qt::OtherFocusReason);
        return;
    }
    Place::keyPressEvent(event);
}

}  // namespace hearth::ui::records
