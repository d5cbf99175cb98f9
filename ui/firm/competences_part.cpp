// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/firm/competences_part.h"

namespace hearth::ui::firm {

using words::qstring;

namespace {
constexpr int kCompetenceColumns = 2;
}  // namespace

CompetencesPart::CompetencesPart(const shell::Context& context, const QString& nameContext, QWidget* parent)
    : QWidget(parent),
      m_context(context),
      m_nameContext(nameContext),
      m_lines(new QVBoxLayout(this)),
      m_add(new shell::KeyButton(tr("Add a category"), shell::ButtonKind::Quiet, this)) {
    m_lines->setContentsMargins(2 * look::kGap, 0, 0, look::kGap);
    m_lines->setSpacing(look::kGap / 2);
    m_add->setObjectName(QStringLiteral("addCompetenceButton"));
    m_add->setAccessibleName(tr("%1: add a category").arg(nameContext));
    m_add->setEnabled(!m_context.store.isReadOnly());
    m_lines->addWidget(m_add, 0, Qt::AlignLeft);
    connect(m_add, &QPushButton::clicked, this, &CompetencesPart::add);
}

CompetencesPart::Row CompetencesPart::makeRow(std::size_t number) {
    const QString name = tr("%1, category %2").arg(m_nameContext).arg(number + 1);
    Row row{};
    row.line = new QWidget(this);
    auto* columns = new QHBoxLayout(row.line);
    columns->setContentsMargins(0, 0, 0, 0);
    columns->setSpacing(look::kGap);
    row.form = new shell::RegisterForm<reg::Competence>(m_context, kCompetenceColumns, name, row.line);
    row.form->addText(tr("Category of work"), "category", &reg::Competence::category);
    row.form->addDate(tr("Runs out on"), "categoryExpires", [](reg::Competence& it) {
        return shell::DateSlot{it.expires, it.expiresText};
    });
    row.remove = new shell::KeyButton(tr("Take it away"), shell::ButtonKind::Quiet, row.line);
    row.remove->setAccessibleName(tr("%1: take it away").arg(name));
    row.remove->setEnabled(!m_context.store.isReadOnly());
    columns->addWidget(row.form, 1);
    columns->addWidget(row.remove, 0, Qt::AlignBottom);
    m_lines->insertWidget(m_lines->indexOf(m_add), row.line);
    connect(row.remove, &QPushButton::clicked, this, [this, number] { remove(number); });
    return row;
}

void CompetencesPart::show(reg::EngineerId engineer) {
    m_engineer = engineer;
    refresh();
}

void CompetencesPart::refresh() {
    const auto held = m_context.store.competences(m_engineer).value_or(std::vector<reg::Competence>());
    while (m_rows.size() > held.size()) {
        delete m_rows.back().line;
        m_rows.pop_back();
    }
    while (m_rows.size() < held.size()) {
        m_rows.push_back(makeRow(m_rows.size()));
    }
    for (std::size_t i = 0; i < held.size(); ++i) {
        m_rows[i].form->show(held[i]);
    }
}

void CompetencesPart::add() {
    if (m_rows.empty() || !m_rows.back().form->value().id.isNull()) {
        m_rows.push_back(makeRow(m_rows.size()));
        reg::Competence competence;
        competence.engineer = m_engineer;
        m_rows.back().form->show(competence);
        shell::orderTabs(window());
    }
    m_rows.back().form->takeFocus();
}

void CompetencesPart::remove(std::size_t row) {
    const auto id = m_rows.at(row).form->value().id;
    if (!id.isNull()) {
        if (const auto done = m_context.store.removeCompetence(id); !done) {
            m_context.dialogs.tell(this, tr("It was not taken away"), m_context.words.error(done.error()));
            return;
        }
        m_context.navigator.say(tr("Taken away. Ctrl+Z brings it back."));
    }
    m_add->setFocus(Qt::OtherFocusReason);
    refresh();
}

}  // namespace hearth::ui::firm
