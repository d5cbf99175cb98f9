// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/visit/part_situation.h"

#include "ui/shell/kit.h"
#include "ui/visit/register_fields.h"
#include "ui/visit/subject_name.h"
#include "ui/visit/what_first.h"

namespace hearth::ui::visit {

using record::Field;
using reg::Item;
using words::Words;

SituationPart::SituationPart(const SheetContext& context, const PartRef& ref, QWidget* parent)
    : AskedPart(context, ref, parent), m_whatFirst(new WhatFirst(this)) {
    setSubtitle(
        tr("How dangerous it is, is the engineer's decision: nothing is suggested or filled in here."));
    addWidget(m_whatFirst);
    addWhat();
    addGroups(situationGroups());
    addMore();
    m_notice = new shell::KeyButton(tr("Issue the warning notice now"), shell::ButtonKind::Primary, this);
    m_notice->setObjectName(QStringLiteral("noticeButton"));
    m_notice->setAccessibleName(subjectContext(this->context(), subject()) + QStringLiteral(", ") +
                                m_notice->accessibleName());
    m_notice->setEnabled(!model().isReadOnly());
    passByEnter(m_notice);
    addWidget(m_notice);
    connect(m_notice, &QPushButton::clicked, this, &SituationPart::noticeWanted);
}

void SituationPart::addWhat() {
    shell::Fields* fields = addFields();
    addSituationField(fields, Field::SituationWhat, input::makeLongTextEditor(fields, 2), tr("What is wrong"),
                      situationText(model(), id(), &reg::Situation::what), 6);
    addSituationField(fields, Field::SituationWhere, input::makeTextEditor(fields), tr("Where"),
                      situationText(model(), id(), &reg::Situation::where), 3);
    addSituationField(fields, std::nullopt,
                      input::makeListEditor(fields, applianceChoices(model().file(), words())),
                      tr("At which appliance"), situationAppliance(model(), id()), 3);
    addSituationField(fields, Field::SituationDanger, input::makeChoiceEditor(fields, dangerChoices(words())),
                      tr("How dangerous it is"), situationDanger(model(), id()), 6);
}

void SituationPart::addSituationField(shell::Fields* fields, std::optional<Field> field,
                                      input::Editor* editor, const QString& label, FieldBinding binding,
                                      int span) {
    editor->setLabel(label, subjectContext(context(), subject()));
    fields->add(editor, span);
    adopt(new SheetField(editor, {std::nullopt, field, subject()}, std::move(binding), words()));
}

void SituationPart::refresh() {
    AskedPart::refresh();
    const reg::VisitFile& file = model().file();
    const bool escape = file.choiceOf(subject(), Item::SituationGasEscape) == reg::choice::kYes;
    const auto event = Words::Emergency::SmellOrEscape;
    const bool appears = escape && m_whatFirst->setSteps(
                                       words().emergencyTitle(event),
                                       words().emergencySteps(event, file.installation.gas,
                                                              file.premises.country, file.emergencyContacts));
    if (!escape) {
        m_whatFirst->setSteps({}, {});
    }
    if (appears) {
        Q_EMIT urgent(m_whatFirst);
    }
}

void SituationPart::setReadOnly(bool readOnly) {
    AskedPart::setReadOnly(readOnly);
    m_notice->setEnabled(!readOnly);
}

}  // namespace hearth::ui::visit
