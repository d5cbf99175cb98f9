// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/workings/visit_chooser.h"

#include "ui/shell/line_list.h"
#include "ui/workings/take_over.h"

#include <QKeyEvent>

namespace hearth::ui::workings {

using words::qstring;

namespace {

QString joinedParts(QStringList parts, const QString& between) {
    parts.removeAll(QString());
    return parts.join(between);
}

}  // namespace

VisitChooser::VisitChooser(const shell::Context& context, QWidget* parent)
    : Sheet(parent), m_context(context) {
    setObjectName(QStringLiteral("visitChooser"));
    lines()->addWidget(shell::titleText(tr("Take over into which visit?"), this));
    m_what = shell::bodyText({}, this);
    m_what->setInk(look::Role::SoftInk);
    lines()->addWidget(m_what);
    m_list = new shell::LineList(tr("Open visits"), {}, this);
    m_list->setObjectName(QStringLiteral("openVisitsList"));
    m_list->setGrowing(true);
    lines()->addWidget(m_list);
    m_back = new shell::KeyButton(tr("Back to the sheet"), shell::ButtonKind::Quiet, this);
    m_back->setObjectName(QStringLiteral("backToSheetButton"));
    m_back->showKey(QStringLiteral("Esc"));
    lines()->addWidget(m_back, 0, Qt::AlignLeft);
    lines()->addStretch(1);
    connect(m_list, &shell::LineList::opened, this, [this](int row) {
        Q_EMIT chosen(m_visits[static_cast<std::size_t>(row)], m_list->line(row).title);
    });
    connect(m_back, &QPushButton::clicked, this, &VisitChooser::left);
}

void VisitChooser::open(const QString& question) {
    m_what->setText(tr("“%1” is put below the visit's remarks, as it would be copied. What stands there "
                       "stays.")
                        .arg(question));
    fill();
    if (m_list->count() > 0) {
        m_list->setCurrentRow(0);
        m_list->setFocus(Qt::OtherFocusReason);
    } else {
        m_back->setFocus(Qt::OtherFocusReason);
    }
}

void VisitChooser::fill() {
    m_visits.clear();
    std::vector<shell::Line> lines;
    const auto visits = openVisits(m_context.store);
    m_list->setEmptyText(visits ? tr("No visit is open. Start one from its premises.")
                                : m_context.words.error(visits.error()));
    if (visits) {
        for (const store::VisitLine& visit : *visits) {
            m_visits.push_back(visit.visit.id);
            shell::Line line;
            line.key = qstring(visit.visit.id.text());
            line.title = joinedParts(
                {qstring(visit.address.line1), qstring(visit.address.town), qstring(visit.address.postcode)},
                QStringLiteral(", "));
            line.detail =
                joinedParts({qstring(visit.customer), qstring(visit.engineer)}, QStringLiteral(" · "));
            line.right = m_context.words.shortDate(visit.visit.date);
            lines.push_back(std::move(line));
        }
    }
    m_list->setLines(std::move(lines));
}

void VisitChooser::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape) {
        Q_EMIT left();
        return;
    }
    Sheet::keyPressEvent(event);
}

}  // namespace hearth::ui::workings
