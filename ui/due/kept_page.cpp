// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/due/kept_page.h"

#include "ui/due/call_page.h"
#include "ui/due/due_text.h"

#include <QRegularExpression>

namespace hearth::ui::due {

using words::qstring;

namespace {

constexpr int kMostCopies = 200;

input::Editor* labelled(input::Editor* editor, const char* name, const QString& label) {
    editor->setObjectName(QString::fromLatin1(name));
    editor->setLabel(label);
    return editor;
}

}  // namespace

EarlierPage::EarlierPage(const DueContext& context, QWidget* parent)
    : ActionPage(context, tr("Another firm's check"), parent) {
    setObjectName(QStringLiteral("earlierPage"));
    m_fields = new shell::Fields(3, this);
    m_date = labelled(input::makeDateEditor(m_fields, [this] { return this->context().today(); }),
                      "earlierDate", tr("Day of the check"));
    m_by = labelled(input::makeTextEditor(m_fields), "earlierBy", tr("By whom"));
    m_note = labelled(input::makeTextEditor(m_fields), "earlierNote", tr("Note"));
    for (auto* field : {m_date, m_by, m_note}) {
        m_fields->add(field);
    }
    lines()->addWidget(m_fields);
    m_applianceBox = new QVBoxLayout;
    lines()->addLayout(m_applianceBox);
    m_scanText = shell::softText({}, this);
    m_scanText->setObjectName(QStringLiteral("scanText"));
    lines()->addWidget(m_scanText);
    addButton(tr("Keep the check"), "keepEarlierButton", QKeySequence(Qt::CTRL | Qt::Key_Return),
              shell::ButtonKind::Primary, [this] { keep(); });
    addButton(tr("Scan of the record…"), "scanButton", QKeySequence(Qt::CTRL | Qt::Key_P),
              shell::ButtonKind::Plain, [this] { chooseScan(); });
    endPage();
}

void EarlierPage::show(reg::PremisesId premises) {
    m_premises = premises;
    m_scan.reset();
    setHead(tr("Another firm's check: %1").arg(premisesText(context().shell.store, {premises})),
            tr("It counts as proof of the anniversary. Keep the record as it was handed over."));
    for (auto* field : {m_date, m_by, m_note}) {
        field->setText({});
        field->setProblem({});
    }
    m_scanText->setText(tr("No scan yet."));
    offerAppliances();
}

void EarlierPage::offerAppliances() {
    std::vector<input::ChoiceItem> items{{QString(), tr("all that stood there")}};
    const auto file = context().due.dueFile(m_premises, context().today());
    if (file) {
        for (const auto& item : file->items) {
            if (item.appliance) {
                QStringList parts{qstring(item.appliance->make), qstring(item.appliance->model),
                                  qstring(item.appliance->place)};
                parts.removeAll(QString());
                items.push_back({qstring(item.appliance->id.text()), parts.join(QStringLiteral(" "))});
            }
        }
    }
    delete m_appliance;
    m_appliance = labelled(input::makeListEditor(this, items), "earlierAppliance", tr("Which appliance"));
    m_applianceBox->addWidget(m_appliance);
    m_appliance->setText({});
    shell::orderTabs(this);
}

void EarlierPage::takeFocus() {
    shell::focusOn(m_date);
}

void EarlierPage::chooseScan() {
    const auto files = context().shell.dialogs.openFiles(this, tr("Scan of the record"),
                                                         tr("Papers (*.pdf *.jpg *.jpeg *.png)"));
    if (files.isEmpty()) {
        return;
    }
    auto paper = paperFrom(files.front());
    if (!paper) {
        tell(tr("The scan was not taken"), paper.error());
        return;
    }
    m_scan = std::move(*paper);
    m_scanText->setText(tr("Scan: %1").arg(qstring(m_scan->name)));
}

void EarlierPage::keep() {
    commit();
    const auto date = shell::dateTyped(m_date->text(), context().today());
    if (!date || !*date || **date > context().today()) {
        m_date->setProblem(date && *date ? tr("That is yet to come.") : tr("Which day?"));
        takeFocus();
        return;
    }
    reg::EarlierCheck check;
    check.premises = m_premises;
    check.date = **date;
    check.by = m_by->text().trimmed().toStdString();
    check.note = m_note->text().trimmed().toStdString();
    if (const auto appliance = uuidFromText(m_appliance->text().toStdString())) {
        check.appliance = reg::ApplianceId{*appliance};
    }
    const auto kept = m_scan ? context().due.save(check, *m_scan) : context().due.save(check);
    if (!kept) {
        tell(tr("The check was not kept"), kept.error());
        return;
    }
    finish(tr("Kept. The deadline follows from it."));
}

QString numberPattern(const QString& line) {
    static const QRegularExpression number(QStringLiteral("\\d+"));
    const auto found = number.match(line);
    return found.hasMatch() ? line.left(found.capturedStart()) + u'#' + line.mid(found.capturedEnd())
                            : line + QStringLiteral(" #");
}

CopyPage::CopyPage(const DueContext& context, QWidget* parent)
    : ActionPage(context, tr("Alike flats"), parent) {
    setObjectName(QStringLiteral("copyPage"));
    auto* fields = new shell::Fields(4, this);
    m_pattern = labelled(input::makeTextEditor(fields), "copyPattern", tr("First line, # for the number"));
    m_first = labelled(input::makeTextEditor(fields), "copyFirst", tr("From number"));
    m_last = labelled(input::makeTextEditor(fields), "copyLast", tr("To number"));
    fields->add(m_pattern, 2);
    fields->add(m_first);
    fields->add(m_last);
    lines()->addWidget(fields);
    for (auto* field : {m_pattern, m_first, m_last}) {
        connect(field, &input::Editor::committed, this, &CopyPage::look);
    }
    m_preview = shell::bodyText({}, this);
    m_preview->setObjectName(QStringLiteral("copyPreview"));
    lines()->addWidget(m_preview);
    addButton(tr("Make them"), "makeCopiesButton", QKeySequence(Qt::CTRL | Qt::Key_Return),
              shell::ButtonKind::Primary, [this] { copy(); });
    endPage();
}

void CopyPage::show(reg::PremisesId premises) {
    m_premises = premises;
    if (const auto found = context().shell.store.premises(premises); found) {
        m_address = found->address;
    }
    setHead(tr("Alike flats: %1").arg(oneLineOf(m_address)),
            tr("With its installations, pipes and appliances, its landlord and agent. Without serial and "
               "meter numbers, readings, tenants and history."));
    m_pattern->setText(numberPattern(qstring(m_address.line1)));
    m_first->setText({});
    m_last->setText({});
    look();
}

void CopyPage::takeFocus() {
    shell::focusOn(m_first);
}

std::vector<store::AlikePremises> CopyPage::alike() {
    bool firstGood = false;
    bool lastGood = false;
    const int first = m_first->text().trimmed().toInt(&firstGood);
    const int last = m_last->text().trimmed().toInt(&lastGood);
    std::vector<store::AlikePremises> made;
    const bool good = firstGood && lastGood && first >= 0 && last >= first && last - first < kMostCopies &&
                      m_pattern->text().contains(u'#');
    for (int number = first; good && number <= last; ++number) {
        store::AlikePremises one;
        one.address = m_address;
        one.address.line1 =
            QString(m_pattern->text().trimmed()).replace(u'#', QString::number(number)).toStdString();
        if (one.address.line1 != m_address.line1) {  // the one that is there stays one
            made.push_back(std::move(one));
        }
    }
    return made;
}

void CopyPage::look() {
    const auto made = alike();
    m_preview->setText(made.empty()
                           ? tr("Type the first and the last number, at most 200 in one go.")
                           : tr("%n premises: %1 to %2.", nullptr, static_cast<int>(made.size()))
                                 .arg(oneLineOf(made.front().address), oneLineOf(made.back().address)));
}

void CopyPage::copy() {
    commit();
    const auto made = alike();
    if (made.empty()) {
        takeFocus();
        return;
    }
    const auto copied = context().due.copyPremises(m_premises, made);
    if (!copied) {
        tell(tr("No premises were made"), copied.error());
        return;
    }
    finish(tr("%n premises made. Ctrl+Z takes them back.", nullptr, static_cast<int>(copied->size())));
}

}  // namespace hearth::ui::due
