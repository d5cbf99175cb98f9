// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/firm/engineers_part.h"

#include "ui/firm/competences_part.h"

namespace hearth::ui::firm {

using words::qstring;

EngineersPart::EngineersPart(const shell::Context& context, QWidget* parent)
    : QWidget(parent), m_context(context), m_lines(new QVBoxLayout(this)) {
    m_lines->setContentsMargins(0, 0, 0, 0);
    m_lines->setSpacing(look::kGap);
    m_lines->addWidget(shell::headingText(tr("Engineers"), this));
    m_problem = shell::bodyText({}, this);
    m_problem->setInk(look::Role::Fail);
    m_problem->hide();
    m_lines->addWidget(m_problem);
    m_add = new shell::KeyButton(tr("Add an engineer"), shell::ButtonKind::Quiet, this);
    m_add->setObjectName(QStringLiteral("addEngineerButton"));
    m_add->setEnabled(!m_context.store.isReadOnly());
    m_lines->addWidget(m_add, 0, Qt::AlignLeft);
    connect(m_add, &QPushButton::clicked, this, &EngineersPart::add);
}

input::Editor* EngineersPart::addField(QWidget* line, input::Editor* editor, const QString& label,
                                       const char* name) {
    const auto number = m_rows.size() + 1;
    editor->setLabel(label, tr("Engineer %1").arg(number));
    editor->setObjectName(QStringLiteral("%1%2").arg(QString::fromLatin1(name)).arg(number));
    editor->setReadOnly(m_context.store.isReadOnly());
    line->layout()->addWidget(editor);
    line->layout()->setAlignment(editor, Qt::AlignTop);
    return editor;
}

void EngineersPart::makeRow(const reg::Engineer& engineer) {
    const std::size_t index = m_rows.size();
    auto* line = new QWidget(this);
    auto* rows = new QVBoxLayout(line);
    rows->setContentsMargins(0, 0, 0, 0);
    auto* fields = new QWidget(line);
    auto* columns = new QHBoxLayout(fields);
    columns->setContentsMargins(0, 0, 0, 0);
    columns->setSpacing(2 * look::kGap);
    rows->addWidget(fields);
    Row row{engineer, line, nullptr, nullptr, nullptr, nullptr};
    row.name = addField(fields, input::makeTextEditor(fields), tr("Name"), "engineerName");
    row.card = addField(fields, input::makeTextEditor(fields), tr("Card number"), "engineerCard");
    row.expires = addField(fields, input::makeDateEditor(fields), tr("Card runs out on"), "engineerExpires");
    shell::keepOnCommit(row.name, m_context.words, [this, index](const QString& text) {
        return keep(index, [&](reg::Engineer& changed) { changed.name = text.trimmed().toStdString(); });
    });
    shell::keepOnCommit(row.card, m_context.words, [this, index](const QString& text) {
        return keep(index,
                    [&](reg::Engineer& changed) { changed.cardNumber = text.trimmed().toStdString(); });
    });
    shell::keepOnCommit(row.expires, m_context.words,
                        [this, index](const QString& text) { return keepExpiry(index, text); });
    row.competences = new CompetencesPart(m_context, tr("Engineer %1").arg(index + 1), line);
    rows->addWidget(row.competences);
    m_lines->insertWidget(m_lines->indexOf(m_add), line);
    m_rows.push_back(row);
    fill(row);
}

void EngineersPart::fill(const Row& row) {
    row.name->setText(qstring(row.engineer.name));
    row.card->setText(qstring(row.engineer.cardNumber));
    reg::Engineer engineer = row.engineer;
    shell::showDate(row.expires, {engineer.cardExpires, engineer.cardExpiresText},
                    m_context.clock.today("Europe/London"), m_context.words);
    row.competences->setVisible(!engineer.id.isNull());
    if (!engineer.id.isNull()) {
        row.competences->show(engineer.id);
    }
    row.name->setProblem({});
    row.card->setProblem({});
}

void EngineersPart::refresh() {
    const auto engineers = m_context.store.engineers();
    m_problem->setVisible(!engineers);
    if (!engineers) {
        m_problem->setText(m_context.words.error(engineers.error()));
        return;
    }
    while (m_rows.size() > engineers->size()) {
        delete m_rows.back().line;
        m_rows.pop_back();
    }
    for (std::size_t i = 0; i < engineers->size(); ++i) {
        if (i == m_rows.size()) {
            makeRow((*engineers)[i]);
        } else {
            m_rows[i].engineer = (*engineers)[i];
            fill(m_rows[i]);
        }
    }
}

void EngineersPart::takeFocus(const std::string& engineer, bool card) {
    const auto at = std::find_if(m_rows.begin(), m_rows.end(),
                                 [&](const Row& row) { return row.engineer.id.text() == engineer; });
    if (!m_rows.empty()) {
        const Row& row = at == m_rows.end() ? m_rows.front() : *at;
        shell::focusOn(card ? row.card : row.name);
    }
}

void EngineersPart::add() {
    if (m_rows.empty() || !m_rows.back().engineer.id.isNull()) {
        makeRow({});
        shell::orderTabs(this);
    }
    shell::focusOn(m_rows.back().name);
}

Result<void> EngineersPart::keep(std::size_t row, const std::function<void(reg::Engineer&)>& change) {
    reg::Engineer engineer = m_rows[row].engineer;
    change(engineer);
    if (engineer.id.isNull()) {
        if (engineer.name.empty()) {
            m_rows[row].engineer = engineer;  // waits for the name
            return {};
        }
        engineer.id = {m_context.store.newId()};
    }
    const auto kept = m_context.store.save(engineer);
    if (kept) {
        m_rows[row].engineer = engineer;
        m_rows[row].competences->setVisible(true);
        m_rows[row].competences->show(engineer.id);
    }
    return kept;
}

Result<void> EngineersPart::keepExpiry(std::size_t row, const QString& text) {
    Result<void> readable;
    const auto kept = keep(row, [&](reg::Engineer& changed) {
        readable = shell::takeDate(text, m_context.clock.today("Europe/London"),
                                   {changed.cardExpires, changed.cardExpiresText});
    });
    return kept ? readable : kept;
}

}  // namespace hearth::ui::firm
