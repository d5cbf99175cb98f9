// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/visit/part_view.h"

#include "ui/look/look.h"
#include "ui/shell/attachments_part.h"
#include "ui/shell/kit.h"
#include "ui/visit/subject_name.h"
#include "ui/visit/wanted.h"

#include <QCoreApplication>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace hearth::ui::visit {

namespace {

constexpr int kColumns = 6;
constexpr int kPartGap = 4 * look::kGap;

}  // namespace

PartView::PartView(const SheetContext& context, const PartRef& ref, QWidget* parent)
    : QWidget(parent),
      m_context(context),
      m_ref(ref),
      m_subject(visit::subjectOf(ref, context.model.file())),
      m_lines(new QVBoxLayout(this)) {
    m_lines->setContentsMargins(0, 0, 0, kPartGap);
    m_lines->setSpacing(look::kGap);
    m_title = shell::titleText({}, this);
    m_subtitle = shell::softText({}, this);
    m_subtitle->hide();
    m_room = new QSpacerItem(0, 0, QSizePolicy::Minimum, QSizePolicy::Fixed);
    m_lines->addWidget(m_title);
    m_lines->addWidget(m_subtitle);
    m_lines->addItem(m_room);
    setTitle(partTitle(ref, context.model.file(), context.window.words));
}

SheetField* PartView::find(const FieldKey& key) const {
    const auto at = std::find_if(m_fields.begin(), m_fields.end(), [&](const SheetField* field) {
        const FieldKey& own = field->key();
        return own.item == key.item && own.field == key.field && (!key.item || own.subject == key.subject);
    });
    return at == m_fields.end() ? nullptr : *at;
}

input::Editor* PartView::editorFor(const FieldKey& key) const {
    const SheetField* field = find(key);
    return field != nullptr ? field->editor() : nullptr;
}

QWidget* PartView::anchorOf(const judging::Judged& judged) const {
    for (const reg::Item item : judged.about) {
        const SheetField* field = find({item, std::nullopt, judged.subject});
        if (field != nullptr && !field->editor()->isHidden()) {
            return field->editor();
        }
    }
    return m_title;
}

void PartView::refill() {
    for (SheetField* field : m_fields) {
        field->refill();
    }
}

void PartView::refresh() {
    for (const SheetField* field : m_fields) {
        const FieldKey& key = field->key();
        if (!key.item) {
            continue;
        }
        field->editor()->suggest(model().lastFact(key.subject, *key.item));
        const bool wanted = isShown(key);
        if (field->editor()->isHidden() == wanted) {
            field->editor()->setVisible(wanted);
        }
    }
}

bool PartView::isShown(const FieldKey& key) const {
    return isWanted(*key.item, key.subject, model().file(), model().findings());
}

void PartView::drop(const reg::SubjectRef& subject) {
    m_fields.erase(std::remove_if(m_fields.begin(), m_fields.end(),
                                  [&](const SheetField* field) { return field->key().subject == subject; }),
                   m_fields.end());
}

void PartView::takeFocus() {
    for (const SheetField* field : m_fields) {
        if (!field->editor()->isHidden() && field->editor()->isEnabled()) {
            shell::focusOn(field->editor());
            return;
        }
    }
}

void PartView::setReadOnly(bool readOnly) {
    for (const SheetField* field : m_fields) {
        field->editor()->setReadOnly(readOnly);
    }
}

void PartView::setRoomForNotes(int height) {
    const int used = m_room->geometry().top() >= 0 ? m_room->geometry().top() : 0;
    const int wanted = std::max(0, height - used);
    if (wanted != m_room->sizeHint().height()) {
        m_room->changeSize(0, wanted, QSizePolicy::Minimum, QSizePolicy::Fixed);
        m_lines->invalidate();
    }
}

reg::SubjectRef PartView::subjectOf(reg::Item item) const {
    const reg::VisitFile& file = model().file();
    const bool isOfTest = reg::infoOf(item).subject == reg::SubjectKind::Test;
    if (isOfTest && subject().kind != reg::SubjectKind::Test && !file.tests.empty()) {
        return reg::subject(file.tests.front().id);
    }
    return subject();
}

const judging::Judged* PartView::finding(rulebook::FindingKind kind) const {
    const auto& findings = model().findings();
    const reg::SubjectRef own = subject();
    const auto at = std::find_if(findings.begin(), findings.end(), [&](const judging::Judged& judged) {
        return judged.finding.kind == kind && (own.kind == reg::SubjectKind::Visit || judged.subject == own);
    });
    return at == findings.end() ? nullptr : &*at;
}

void PartView::setTitle(const QString& title) {
    m_title->setText(title);
    setAccessibleName(title);
}

void PartView::setSubtitle(const QString& subtitle) {
    m_subtitle->setText(subtitle);
    m_subtitle->setVisible(!subtitle.isEmpty());
}

void PartView::addHeading(const QString& text) {
    auto* heading = shell::headingText(text, this);
    heading->setContentsMargins(0, look::kGap, 0, 0);
    addWidget(heading);
}

void PartView::addWidget(QWidget* widget, Qt::Alignment where) {
    m_lines->insertWidget(m_lines->count() - 1, widget, 0, where);
}

shell::AttachmentsPart* PartView::addPictures(const char* ownerTable) {
    addHeading(QCoreApplication::translate("hearth::ui::visit::PartView", "Photographs"));
    auto* pictures =
        new shell::AttachmentsPart(m_context.window, partTitle(m_ref, model().file(), words()), this);
    pictures->setReadOnly(model().isReadOnly());
    pictures->showOnVisit(ownerTable, m_subject.id, model().file().visit.id);
    addWidget(pictures);
    // An undo may have changed them.
    connect(&model(), &VisitSheetModel::reloaded, pictures, [this, pictures, ownerTable] {
        pictures->showOnVisit(ownerTable, m_subject.id, model().file().visit.id);
    });
    return pictures;
}

shell::Fields* PartView::addFields() {
    auto* fields = new shell::Fields(kColumns, this);
    addWidget(fields);
    return fields;
}

SheetField* PartView::addItem(shell::Fields* fields, reg::Item item, int span) {
    return addItemOf(fields, subjectOf(item), item, span);
}

SheetField* PartView::addItemOf(shell::Fields* fields, const reg::SubjectRef& subject, reg::Item item,
                                int span) {
    input::Editor* editor = makeItemEditor(fields, item, m_context);
    editor->setLabel(words().item(item), subjectContext(m_context, subject));
    editor->setToolTip(words().itemHelp(item));
    fields->add(editor, span);
    return adopt(
        new SheetField(editor, {item, std::nullopt, subject}, itemBinding(model(), subject, item), words()));
}

SheetField* PartView::makeBareItem(QWidget* parent, reg::Item item) {
    const reg::SubjectRef subject = subjectOf(item);
    input::Editor* editor = makeItemEditor(parent, item, m_context);
    QStringList name{subjectContext(m_context, subject), words().item(item)};
    name.removeAll(QString());
    editor->setLabel({}, name.join(QStringLiteral(", ")));
    return adopt(
        new SheetField(editor, {item, std::nullopt, subject}, itemBinding(model(), subject, item), words()));
}

SheetField* PartView::addField(shell::Fields* fields, SheetField* field, const QString& label, int span) {
    field->editor()->setLabel(label);
    fields->add(field->editor(), span);
    return adopt(field);
}

SheetField* PartView::adopt(SheetField* field) {
    m_fields.push_back(field);
    connect(field->editor(), &input::Editor::answered, this,
            [this, editor = field->editor()] { Q_EMIT answered(editor); });
    field->refill();
    field->editor()->setReadOnly(model().isReadOnly());
    return field;
}

void passByEnter(QPushButton* button) {
    button->setProperty("passedByEnter", true);
    button->setToolTip(QCoreApplication::translate("hearth::ui::visit::PartView",
                                                   "Space presses it; Enter goes on to the next field."));
}

void leaveOutByEnter(QWidget* widget) {
    widget->setProperty("leftOutByEnter", true);
}

bool isLeftOutByEnter(const QObject* widget) {
    return widget != nullptr && widget->property("leftOutByEnter").toBool();
}

bool isPassedByEnter(const QObject* widget) {
    return widget->property("passedByEnter").toBool();
}

namespace {

const char* titleOf(PartKind kind) {
    switch (kind) {
        case PartKind::WhoAndWhere:
            return QT_TRANSLATE_NOOP("hearth::ui::visit::PartView", "Who and where");
        case PartKind::BeforeYouStart:
            return QT_TRANSLATE_NOOP("hearth::ui::visit::PartView", "Before you start");
        case PartKind::Rooms:
            return QT_TRANSLATE_NOOP("hearth::ui::visit::PartView", "Rooms and alarms");
        case PartKind::Investigation:
            return QT_TRANSLATE_NOOP("hearth::ui::visit::PartView", "CO or fumes in a room");
        case PartKind::Pipework:
            return QT_TRANSLATE_NOOP("hearth::ui::visit::PartView", "Meter and pipework");
        case PartKind::Tightness:
            return QT_TRANSLATE_NOOP("hearth::ui::visit::PartView", "Let-by and tightness");
        case PartKind::Restore:
            return QT_TRANSLATE_NOOP("hearth::ui::visit::PartView", "Purge and restore");
        case PartKind::Larger:
            return QT_TRANSLATE_NOOP("hearth::ui::visit::PartView", "Larger pipework");
        case PartKind::Appliances:
            return QT_TRANSLATE_NOOP("hearth::ui::visit::PartView", "Appliances");
        case PartKind::Appliance:
            return QT_TRANSLATE_NOOP("hearth::ui::visit::PartView", "Appliance");
        case PartKind::Situations:
            return QT_TRANSLATE_NOOP("hearth::ui::visit::PartView", "Unsafe situations");
        case PartKind::Situation:
            return QT_TRANSLATE_NOOP("hearth::ui::visit::PartView", "Unsafe situation");
        case PartKind::HandOver:
            return QT_TRANSLATE_NOOP("hearth::ui::visit::PartView", "Hand-over");
        case PartKind::Records:
            break;
    }
    return QT_TRANSLATE_NOOP("hearth::ui::visit::PartView", "Records to issue");
}

}  // namespace

QString partTitle(const PartRef& ref, const reg::VisitFile& file, const words::Words& words) {
    const QString title = QCoreApplication::translate("hearth::ui::visit::PartView", titleOf(ref.kind));
    const auto subject = subjectOf(ref, file);
    if (ref.kind == PartKind::Appliance) {
        return subjectName(subject, file, words);
    }
    const bool isOneOfSeveral =
        ref.kind == PartKind::Situation || (subject.kind == reg::SubjectKind::Test && file.tests.size() > 1);
    return isOneOfSeveral ? title + QStringLiteral(" \u00B7 ") + subjectName(subject, file, words) : title;
}

}  // namespace hearth::ui::visit
