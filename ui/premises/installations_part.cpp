// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/premises/installations_part.h"

namespace hearth::ui::premises {

InstallationsPart::InstallationsPart(const shell::Context& context, QWidget* parent)
    : QWidget(parent), m_context(context), m_lines(new QVBoxLayout(this)) {
    m_lines->setContentsMargins(0, 0, 0, 0);
    m_lines->setSpacing(look::kGap);
    m_problem = shell::bodyText({}, this);
    m_problem->setInk(look::Role::Fail);
    m_problem->hide();
    m_lines->addWidget(m_problem);
    m_add = new shell::KeyButton(tr("Another installation here"), shell::ButtonKind::Quiet, this);
    m_add->setObjectName(QStringLiteral("addInstallationButton"));
    m_add->setEnabled(!m_context.store.isReadOnly());
    m_lines->addWidget(m_add, 0, Qt::AlignLeft);
    connect(m_add, &QPushButton::clicked, this, &InstallationsPart::add);
}

void InstallationsPart::build(std::size_t count) {
    qDeleteAll(m_forms);
    qDeleteAll(m_headings);
    m_forms.clear();
    m_headings.clear();
    for (std::size_t i = 0; i < count; ++i) {
        const QString name = count == 1 ? tr("Gas installation") : tr("Gas installation %1").arg(i + 1);
        auto* heading = shell::headingText(name, this);
        auto* form = new InstallationForm(m_context, count == 1 ? QString() : name, this);
        m_lines->insertWidget(m_lines->count() - 1, heading);
        m_lines->insertWidget(m_lines->count() - 1, form);
        m_headings.push_back(heading);
        m_forms.push_back(form);
    }
}

void InstallationsPart::show(reg::PremisesId id) {
    m_premises = id;
    const auto installations = m_context.store.installations(id);
    m_problem->setVisible(!installations);
    if (!installations) {
        m_problem->setText(m_context.words.error(installations.error()));
        return;
    }
    if (installations->size() != m_forms.size()) {
        build(installations->size());
    }
    for (std::size_t i = 0; i < m_forms.size(); ++i) {
        m_forms[i]->show((*installations)[i]);
    }
}

rulebook::Gas InstallationsPart::gas() const {
    return m_forms.empty() ? rulebook::Gas::NaturalGas : m_forms.front()->value().gas;
}

void InstallationsPart::add() {
    reg::Installation installation;
    installation.id = {m_context.store.newId()};
    installation.premises = m_premises;
    if (const auto kept = m_context.store.save(installation); !kept) {
        m_context.dialogs.tell(this, tr("The installation was not added"),
                               m_context.words.error(kept.error()));
        return;
    }
    show(m_premises);
    shell::orderTabs(window());
    m_context.navigator.say(tr("Added. Ctrl+Z takes it away again."));
}

}  // namespace hearth::ui::premises
