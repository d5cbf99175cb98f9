// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/visit/part_lists.h"

#include "ui/shell/kit.h"
#include "ui/shell/line_list.h"
#include "ui/visit/subject_name.h"
#include "ui/words/kept_words.h"

#include <algorithm>

namespace hearth::ui::visit {

using reg::Item;
using shell::Line;

ListPart::ListPart(const SheetContext& context, const PartRef& ref, QWidget* parent)
    : PartView(context, ref, parent) {
    const bool appliances = ofAppliances();
    m_list = new shell::LineList(appliances ? tr("Appliances") : tr("Unsafe situations"), {}, this);
    m_list->setGrowing(true);
    addWidget(m_list);
    m_add = new shell::KeyButton(appliances ? tr("Another appliance") : tr("An unsafe situation"),
                                 shell::ButtonKind::Quiet, this);
    m_add->setObjectName(appliances ? QStringLiteral("addApplianceButton")
                                    : QStringLiteral("addSituationButton"));
    if (!appliances) {
        m_add->showKey(QKeySequence(Qt::CTRL | Qt::Key_U).toString(QKeySequence::NativeText));
    }
    passByEnter(m_add);
    addWidget(m_add, Qt::AlignLeft);
    m_refused = new shell::Text({}, look::TypeRole::Body, look::Role::Fail, this);
    m_refused->setWordWrap(true);
    m_refused->hide();
    addWidget(m_refused);
    connect(m_add, &QPushButton::clicked, this, &ListPart::add);
    connect(m_list, &shell::LineList::opened, this, [this](int row) {
        const reg::VisitFile& file = model().file();
        const auto index = static_cast<std::size_t>(row);
        if (!ofAppliances()) {
            Q_EMIT chosen(reg::subject(file.situations[index].id));
            return;
        }
        const reg::ApplianceId id = file.appliances[index].id;
        if (const auto kept = model().take(id); !kept) {
            refuse(kept.error());
        }
        Q_EMIT chosen(reg::subject(id));
    });
    setReadOnly(model().isReadOnly());
}

void ListPart::refuse(const Error& error) {
    m_refused->setText(words().error(error));
    m_refused->show();
}

void ListPart::add() {
    if (ofAppliances()) {
        const auto made = model().addAppliance();
        made ? Q_EMIT chosen(reg::subject(*made)) : refuse(made.error());
        return;
    }
    const auto made = model().addSituation(std::nullopt, context().window.clock.now());
    made ? Q_EMIT chosen(reg::subject(*made)) : refuse(made.error());
}

void ListPart::refresh() {
    PartView::refresh();
    const reg::VisitFile& file = model().file();
    std::vector<Line> lines;
    if (ofAppliances()) {
        for (const reg::Appliance& one : file.appliances) {
            const auto on = reg::subject(one.id);
            const auto seen = file.choiceOf(on, Item::ApplianceInspected);
            lines.push_back({QString::fromStdString(one.id.text()),
                             subjectName(on, file, words()),
                             {},
                             seen.empty()
                                 ? tr("nothing entered yet")
                                 : words().choice(Item::ApplianceInspected, std::string(seen)).remove(u'&')});
        }
    } else {
        for (const reg::Situation& one : file.situations) {
            lines.push_back({QString::fromStdString(one.id.text()),
                             one.what.empty() ? tr("not described yet") : QString::fromStdString(one.what),
                             {},
                             words::danger(words(), one.danger),
                             {},
                             rulebook::Outcome::Fail});
        }
    }
    m_list->setVisible(!lines.empty());
    m_list->setLines(std::move(lines));
}

void ListPart::takeFocus() {
    if (m_list->isHidden()) {
        m_add->setFocus(Qt::OtherFocusReason);
    } else {
        m_list->setFocus(Qt::OtherFocusReason);
    }
}

void ListPart::setReadOnly(bool readOnly) {
    PartView::setReadOnly(readOnly);
    m_add->setEnabled(!readOnly);
}

}  // namespace hearth::ui::visit
