// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/visit/visits_place.h"

#include "ui/look/look.h"
#include "ui/shell/exporting.h"
#include "ui/shell/kit.h"
#include "ui/shell/line_list.h"
#include "ui/visit/joined.h"
#include "ui/visit/sheet.h"
#include "ui/visit/sheet_model.h"

#include <QStackedLayout>
#include <QVBoxLayout>

#include <algorithm>

namespace hearth::ui::visit {

using shell::Line;
using shell::LineList;

namespace {

/// Judging takes its time: what the newest of the open ones need is told.
constexpr std::size_t kMostJudged = 15;

/// Work that is open stands first; within that the newest.
bool standsBefore(const store::VisitLine& a, const store::VisitLine& b) {
    const auto isOpen = [](const store::VisitLine& line) { return !line.visit.closed && line.records == 0; };
    if (isOpen(a) != isOpen(b)) {
        return isOpen(a);
    }
    return std::pair(a.visit.date, a.visit.startedAt) > std::pair(b.visit.date, b.visit.startedAt);
}

}  // namespace

VisitsPlace::VisitsPlace(const shell::Context& context, QWidget* parent)
    : Place(parent), m_context(context) {}

VisitsPlace::~VisitsPlace() = default;

void VisitsPlace::build() {
    if (m_pages != nullptr) {
        return;
    }
    m_model = new VisitSheetModel(m_context.store, this);
    m_pages = new QStackedLayout(this);
    m_listPage = new QWidget(this);
    auto* lines = new QVBoxLayout(m_listPage);
    lines->setContentsMargins(3 * look::kGap, 2 * look::kGap, 3 * look::kGap, 2 * look::kGap);
    lines->addWidget(shell::titleText(tr("Visits"), m_listPage));
    lines->addWidget(shell::softText(
        tr("Open drafts first. Enter opens a visit. A new one is started from its premises."), m_listPage));
    m_refused = new shell::Text({}, look::TypeRole::Body, look::Role::Fail, m_listPage);
    m_refused->setWordWrap(true);
    m_refused->hide();
    lines->addWidget(m_refused);
    m_list = new LineList(tr("Visits"), {}, m_listPage);
    lines->addWidget(m_list, 1);
    lines->addWidget(shell::exportButton({exchange::ListKind::Visits}, m_context, m_listPage), 0,
                     Qt::AlignLeft);
    m_pages->addWidget(m_listPage);
    connect(m_list, &LineList::opened, this,
            [this](int row) { openVisit(m_visits[static_cast<std::size_t>(row)]); });
}

VisitSheet* VisitsPlace::sheet() const {
    return m_sheet != nullptr && m_pages->currentWidget() == m_sheet ? m_sheet : nullptr;
}

void VisitsPlace::refresh() {
    build();
    if (sheet() == nullptr) {
        fillList();
        return;
    }
    if (const auto read = m_model->reload(); !read) {
        showList();  // the visit itself was taken back
    }
}

void VisitsPlace::fillList() {
    auto visits = m_context.store.visits(m_search.toStdString());
    if (!visits) {
        refuse(visits.error());
        return;
    }
    std::stable_sort(visits->begin(), visits->end(), standsBefore);
    m_visits.clear();
    std::vector<Line> lines;
    std::size_t open = 0;
    for (const store::VisitLine& visit : *visits) {
        m_visits.push_back(visit.visit.id);
        const bool isOpen = !visit.visit.closed && visit.records == 0;
        open += isOpen ? 1 : 0;
        const QString where =
            joined({QString::fromStdString(visit.address.line1), QString::fromStdString(visit.address.town),
                    QString::fromStdString(visit.address.postcode)},
                   QStringLiteral(", "));
        lines.push_back(
            {QString::fromStdString(visit.visit.id.text()), where,
             joined({QString::fromStdString(visit.customer), QString::fromStdString(visit.engineer)},
                    QStringLiteral(" \u00B7 ")),
             m_context.words.shortDate(visit.visit.date),
             isOpen              ? stateOfOpen(visit.visit, open <= kMostJudged)
             : visit.records > 0 ? tr("issued")
                                 : tr("closed")});
    }
    m_list->setEmptyText(m_search.isEmpty() ? tr("No visits yet. Start one from its premises.")
                                            : tr("No visit is found by \"%1\".").arg(m_search));
    m_list->setLines(std::move(lines));
    m_refused->hide();
}

/// What an open visit still needs, so that half-done work is taken up where it was left.
QString VisitsPlace::stateOfOpen(const reg::Visit& visit, bool judges) const {
    const QString state = visit.date > m_context.clock.today() ? tr("booked") : tr("draft");
    if (!judges) {
        return state;
    }
    const auto file = m_context.store.visitFile(visit.id);
    const auto book = m_context.store.ruleBook();
    if (!file || !book) {
        return state;
    }
    const auto findings = judging::judge(*file, *book);
    std::size_t missing = 0;
    for (const record::RecordKind kind : record::kindsOf(*file)) {
        missing += record::missingFor(kind, *file, findings).size();
    }
    return missing == 0 ? tr("%1, ready to issue").arg(state)
                        : tr("%1, missing: %2").arg(state).arg(static_cast<int>(missing));
}

void VisitsPlace::refuse(const Error& error) {
    m_refused->setText(m_context.words.error(error));
    m_refused->show();
}

void VisitsPlace::openVisit(reg::VisitId id) {
    build();
    const auto opened = m_model->open(id);
    if (!opened) {
        showList();
        refuse(opened.error());
        return;
    }
    if (m_sheet == nullptr) {
        m_sheet = new VisitSheet({*m_model, m_context}, this);
        m_pages->addWidget(m_sheet);
        connect(m_sheet, &VisitSheet::left, this, &VisitsPlace::showList);
    }
    m_pages->setCurrentWidget(m_sheet);
    m_sheet->takeFocus();
}

void VisitsPlace::showList() {
    commit();
    m_pages->setCurrentWidget(m_listPage);
    fillList();
    if (m_model->isOpen()) {
        m_list->setCurrentKey(QString::fromStdString(m_model->file().visit.id.text()));
    }
    m_list->setFocus(Qt::OtherFocusReason);
}

void VisitsPlace::commit() {
    if (m_sheet != nullptr) {
        m_sheet->commit();
        m_sheet->keepPlace();
    }
}

void VisitsPlace::takeFocus() {
    build();
    if (sheet() != nullptr) {
        m_sheet->takeFocus();
    } else {
        m_list->setFocus(Qt::OtherFocusReason);
    }
}

rulebook::Gas VisitsPlace::gas() const {
    return sheet() != nullptr ? m_model->file().installation.gas : rulebook::Gas::NaturalGas;
}

std::optional<reg::Country> VisitsPlace::country() const {
    return sheet() != nullptr ? std::optional(m_model->file().premises.country) : std::nullopt;
}

void VisitsPlace::search(const QString& text) {
    build();
    m_search = text;
    if (sheet() != nullptr && !text.isEmpty()) {
        m_pages->setCurrentWidget(m_listPage);  // the search keeps the keyboard
    }
    fillList();
}

}  // namespace hearth::ui::visit
