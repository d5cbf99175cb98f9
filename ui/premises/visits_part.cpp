// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/premises/visits_part.h"

#include "ui/shell/line_list.h"

namespace hearth::ui::premises {

using words::qstring;

namespace {

shell::Line recordLine(const store::RecordLine& record, const words::Words& words) {
    shell::Line line;
    line.key = qstring(record.id.text());
    line.title = VisitsPart::tr("Record %1, revision %2")
                     .arg(qstring(record.header.record))
                     .arg(record.header.revision);
    line.right = record.letGo ? VisitsPart::tr("erased") : words.outcome(record.outcome);
    if (!record.letGo) {
        line.outcome = record.outcome;
    }
    line.detail = record.supersededBy ? VisitsPart::tr("superseded") : QString();
    return line;
}

}  // namespace

VisitsPart::VisitsPart(const shell::Context& context, QWidget* parent)
    : QWidget(parent),
      m_context(context),
      m_list(
          new shell::LineList(tr("Visits and records here"), tr("No visits yet. Ctrl+N starts one."), this)) {
    auto* lines = new QVBoxLayout(this);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->setSpacing(look::kGap);
    lines->addWidget(shell::headingText(tr("Visits"), this));
    m_list->setObjectName(QStringLiteral("premisesVisitsList"));
    m_list->setGrowing(true);
    lines->addWidget(m_list);
    connect(m_list, &shell::LineList::opened, this, &VisitsPart::open);
}

void VisitsPart::show(reg::PremisesId id) {
    m_targets.clear();
    std::vector<shell::Line> lines;
    const auto visits = m_context.store.visitsOf(id);
    if (!visits) {
        m_list->setEmptyText(m_context.words.error(visits.error()));
        m_list->setLines({});
        return;
    }
    for (const auto& visit : *visits) {
        shell::Line line;
        line.key = qstring(visit.visit.id.text());
        line.title = m_context.words.date(visit.visit.date);
        line.detail = qstring(visit.engineer);
        line.right = visit.visit.closed ? tr("closed") : visit.records > 0 ? tr("issued") : tr("open");
        lines.push_back(line);
        m_targets.emplace_back(visit.visit.id);
        if (visit.records == 0) {
            continue;
        }
        if (const auto records = m_context.store.recordsOf(visit.visit.id)) {
            for (const auto& record : *records) {
                lines.push_back(recordLine(record, m_context.words));
                m_targets.emplace_back(record.id);
            }
        }
    }
    m_list->setEmptyText(tr("No visits yet. Ctrl+N starts one."));
    m_list->setLines(std::move(lines));
}

void VisitsPart::open(int row) {
    const auto& target = m_targets[static_cast<std::size_t>(row)];
    if (const auto* visit = std::get_if<reg::VisitId>(&target)) {
        m_context.navigator.openVisit(*visit);
    } else {
        m_context.navigator.openRecord(std::get<store::RecordId>(target));
    }
}

}  // namespace hearth::ui::premises
