// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/premises/premises_sheet.h"

#include "ui/premises/appliances_part.h"
#include "ui/premises/history.h"
#include "ui/premises/installations_part.h"
#include "ui/premises/people_part.h"
#include "ui/premises/visits_part.h"
#include "ui/shell/attachments_part.h"
#include "ui/shell/line_list.h"
#include "ui/shell/register_form.h"
#include "ui/words/kept_words.h"

namespace hearth::ui::premises {

using shell::coded;
using words::qstring;

namespace {

constexpr int kSheetColumns = 3;
constexpr int kFactColumns = 2;
constexpr int kNoteLines = 3;

QVBoxLayout* plainLines(QWidget* widget) {
    auto* lines = new QVBoxLayout(widget);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->setSpacing(look::kGap);
    return lines;
}

}  // namespace

PremisesSheet::PremisesSheet(const shell::Context& context, QWidget* parent)
    : Sheet(parent), m_context(context) {
    setObjectName(QStringLiteral("premisesSheet"));
    m_nothing = shell::softText(tr("Choose premises from the list, or add new ones."), this);
    lines()->addWidget(m_nothing);
    m_page = new QWidget(this);
    plainLines(m_page);
    lines()->addWidget(m_page);
    lines()->addStretch(1);
    addHead();
    addAddress();
    m_rest = new QWidget(m_page);
    auto* rest = plainLines(m_rest);
    m_page->layout()->addWidget(m_rest);
    m_installations = new InstallationsPart(m_context, m_rest);
    m_appliances = new AppliancesPart(m_context, m_rest);
    m_people = new PeoplePart(m_context, m_rest);
    m_visits = new VisitsPart(m_context, m_rest);
    for (QWidget* part : {static_cast<QWidget*>(m_installations), static_cast<QWidget*>(m_appliances),
                          static_cast<QWidget*>(m_people), static_cast<QWidget*>(m_visits)}) {
        rest->addWidget(shell::hairline(m_rest));
        rest->addWidget(part);
    }
    m_attachments = new shell::AttachmentsPart(m_context, QString(), m_rest);
    rest->addWidget(shell::hairline(m_rest));
    rest->addWidget(shell::headingText(tr("Pictures and papers"), m_rest));
    rest->addWidget(m_attachments);
    connect(m_people, &PeoplePart::changed, this, [this] { Q_EMIT changed(m_premises.id); });
    addFacts();
    addNotes();
    addHistory();
    addBin();
    showNothing();
}

void PremisesSheet::addHead() {
    auto* head = new QHBoxLayout;
    auto* words = new QVBoxLayout;
    m_title = shell::titleText({}, m_page);
    m_subtitle = shell::softText({}, m_page);
    words->addWidget(m_title);
    words->addWidget(m_subtitle);
    head->addLayout(words, 1);
    m_start = new shell::KeyButton(tr("Start a visit"), QKeySequence(Qt::CTRL | Qt::Key_N),
                                   shell::ButtonKind::Primary, m_page);
    m_start->setObjectName(QStringLiteral("startVisitButton"));
    head->addWidget(m_start, 0, Qt::AlignTop);
    static_cast<QVBoxLayout*>(m_page->layout())->addLayout(head);
    connect(m_start, &QPushButton::clicked, this, [this] {
        shell::commitField(this);
        m_context.navigator.startVisit(m_premises.id);
    });
}

void PremisesSheet::addAddress() {
    m_address = new shell::Fields(kSheetColumns, m_page);
    m_page->layout()->addWidget(m_address);
    addAddressField(m_address, tr("Address"), "line1",
                    [](reg::Premises& premises) -> std::string& { return premises.address.line1; });
    addAddressField(m_address, tr("Address, second line"), "line2",
                    [](reg::Premises& premises) -> std::string& { return premises.address.line2; });
    addAddressField(m_address, tr("Town"), "town",
                    [](reg::Premises& premises) -> std::string& { return premises.address.town; });
    addAddressField(m_address, tr("Postcode"), "postcode",
                    [](reg::Premises& premises) -> std::string& { return premises.address.postcode; });
    addCountry();
}

void PremisesSheet::sayDoubts() {
    const auto say = [this](const char* name, const QString& doubt) {
        for (const auto& [editor, field] : m_addressFields) {
            if (!doubt.isEmpty() && editor->objectName() == QLatin1String(name)) {
                editor->setProblem(doubt);
            }
        }
    };
    say("postcode", shell::postcodeDoubt(m_context, m_premises.address.postcode));
    say("uprn", words::doubt(m_context.words, reg::doubtOfUprn(m_premises.uprn)));
}

void PremisesSheet::addAddressField(shell::Fields* fields, const QString& label, const char* name,
                                    TextOf field) {
    auto* editor = input::makeTextEditor(fields);
    editor->setLabel(label);
    editor->setObjectName(QString::fromLatin1(name));
    editor->setReadOnly(m_context.store.isReadOnly());
    fields->add(editor);
    m_addressFields.emplace_back(editor, field);
    shell::keepOnCommit(editor, m_context.words, [this, field](const QString& text) {
        return keep([&](reg::Premises& premises) { field(premises) = text.trimmed().toStdString(); });
    });
    connect(editor, &input::Editor::committed, this, [this] { sayDoubts(); });
}

input::Editor* PremisesSheet::addChoice(shell::Fields* fields, const QString& label, const char* name,
                                        const std::vector<input::ChoiceItem>& choices, TakeCode take) {
    auto* editor = input::makeListEditor(fields, choices);
    editor->setLabel(label);
    editor->setObjectName(QString::fromLatin1(name));
    editor->setReadOnly(m_context.store.isReadOnly());
    fields->add(editor);
    shell::keepOnCommit(editor, m_context.words, [this, take](const QString& code) {
        return keep([&](reg::Premises& premises) { take(premises, code.toStdString()); });
    });
    return editor;
}

void PremisesSheet::addCountry() {
    std::vector<input::ChoiceItem> choices;
    for (const auto country : {reg::Country::England, reg::Country::Wales, reg::Country::Scotland,
                               reg::Country::NorthernIreland}) {
        choices.push_back({coded(reg::codeOf(country)), m_context.words.country(country)});
    }
    m_country = addChoice(m_address, tr("Country"), "country", choices,
                          [](reg::Premises& premises, const std::string& code) {
                              premises.country = reg::countryFromCode(code).value_or(premises.country);
                          });
}

void PremisesSheet::addFacts() {
    auto* rest = m_rest->layout();
    rest->addWidget(shell::hairline(m_rest));
    auto* fields = new shell::Fields(kFactColumns, m_rest);
    rest->addWidget(fields);
    addApplianceInRooms(fields);
    rest->addWidget(shell::softText(
        tr("Where no gas appliance stands in a tenant’s room (all of them in a common boiler room, say), a "
           "copy of the record on display, with a statement, does in place of a copy to each tenant."),
        m_rest));
    addAddressField(fields, tr("Property reference (UPRN)"), "uprn",
                    [](reg::Premises& premises) -> std::string& { return premises.uprn; });
}

void PremisesSheet::addApplianceInRooms(shell::Fields* fields) {
    std::vector<input::ChoiceItem> choices;
    for (const auto answer : {reg::YesNo::NotSaid, reg::YesNo::Yes, reg::YesNo::No}) {
        choices.push_back({coded(reg::codeOf(answer)), words::yesNo(m_context.words, answer)});
    }
    m_applianceInRooms = addChoice(
        fields, tr("Gas appliance in a room that tenants occupy"), "applianceInRooms", choices,
        [](reg::Premises& premises, const std::string& code) {
            premises.applianceInRooms = reg::yesNoFromCode(code).value_or(premises.applianceInRooms);
        });
}

void PremisesSheet::addNotes() {
    auto* rest = m_rest->layout();
    m_showNotes = new shell::KeyButton(tr("Show access notes"), shell::ButtonKind::Quiet, m_rest);
    m_showNotes->setObjectName(QStringLiteral("showNotesButton"));
    rest->addWidget(m_showNotes);
    rest->setAlignment(m_showNotes, Qt::AlignLeft);
    m_notes = input::makeLongTextEditor(m_rest, kNoteLines);
    m_notes->setLabel(tr("Access notes (never printed)"));
    m_notes->setObjectName(QStringLiteral("accessNotes"));
    m_notes->setReadOnly(m_context.store.isReadOnly());
    rest->addWidget(m_notes);
    connect(m_showNotes, &QPushButton::clicked, this, [this] {
        m_notes->setText(qstring(m_premises.accessNotes));
        m_notes->show();
        shell::focusOn(m_notes);
        m_showNotes->hide();
    });
    shell::keepOnCommit(m_notes, m_context.words, [this](const QString& text) {
        return keep([&](reg::Premises& premises) { premises.accessNotes = text.toStdString(); });
    });
}

void PremisesSheet::addHistory() {
    auto* rest = m_rest->layout();
    m_showHistory = new shell::KeyButton(tr("Show what was changed"), shell::ButtonKind::Quiet, m_rest);
    m_showHistory->setObjectName(QStringLiteral("showHistoryButton"));
    rest->addWidget(m_showHistory);
    rest->setAlignment(m_showHistory, Qt::AlignLeft);
    m_history = new shell::LineList(tr("What was changed"), tr("Nothing has been changed yet."), m_rest);
    m_history->setObjectName(QStringLiteral("historyList"));
    m_history->setGrowing(true);
    rest->addWidget(m_history);
    connect(m_showHistory, &QPushButton::clicked, this, [this] {
        fillHistory();
        m_history->show();
        m_history->setFocus(Qt::OtherFocusReason);
        m_showHistory->hide();
    });
}

void PremisesSheet::addBin() {
    auto* rest = m_rest->layout();
    m_bin = new shell::KeyButton(tr("Put these premises into the bin"), shell::ButtonKind::Quiet, m_rest);
    m_bin->setObjectName(QStringLiteral("binPremisesButton"));
    m_bin->setEnabled(!m_context.store.isReadOnly());
    rest->addWidget(m_bin);
    rest->setAlignment(m_bin, Qt::AlignLeft);
    connect(m_bin, &QPushButton::clicked, this, &PremisesSheet::putIntoBin);
}

void PremisesSheet::putIntoBin() {
    const auto& address = m_premises.address;
    const QString name = address.line1.empty() ? tr("Premises without an address") : qstring(address.line1);
    const auto done = m_context.store.putIntoBin("premises", m_premises.id.bytes, name.toStdString());
    if (!done) {
        m_context.dialogs.tell(this, tr("The premises stay where they are"),
                               m_context.words.error(done.error()));
        return;
    }
    showNothing();
    m_context.navigator.say(tr("%1 is in the bin. Ctrl+Z brings it back.").arg(name));
    Q_EMIT gone();
}

void PremisesSheet::setWhole(bool whole) {
    m_nothing->hide();
    m_page->show();
    m_rest->setVisible(whole);
    m_start->setVisible(whole);
    m_start->setEnabled(!m_context.store.isReadOnly());
    m_notes->hide();
    m_showNotes->show();
    m_history->hide();
    m_showHistory->show();
}

void PremisesSheet::show(reg::PremisesId id) {
    const auto premises = m_context.store.premises(id);
    if (!premises) {
        showNothing();
        m_nothing->setText(m_context.words.error(premises.error()));
        return;
    }
    const bool same = !m_isNew && premises->id == m_premises.id && m_page->isVisibleTo(this);
    m_premises = *premises;
    m_isNew = false;
    if (!same) {
        setWhole(true);
        ensureVisible(0, 0);
    } else if (m_history->isVisibleTo(m_rest)) {
        fillHistory();
    }
    fill();
}

void PremisesSheet::showNothing() {
    m_isNew = false;
    m_premises = {};
    m_nothing->setText(tr("Choose premises from the list, or add new ones."));
    m_nothing->show();
    m_page->hide();
}

void PremisesSheet::startNew() {
    m_premises = {};
    if (const auto firm = m_context.store.firm()) {
        m_premises.country = firm->country;
    }
    m_isNew = true;
    setWhole(false);
    fill();
}

void PremisesSheet::takeFocus() {
    if (!m_addressFields.empty()) {
        shell::focusOn(m_addressFields.front().first);
    }
}

rulebook::Gas PremisesSheet::gas() const {
    return m_installations->gas();
}

void PremisesSheet::fill() {
    const QString first = qstring(m_premises.address.line1);
    m_title->setText(m_isNew           ? tr("New premises")
                     : first.isEmpty() ? tr("Premises without an address")
                                       : first);
    m_subtitle->setText(m_isNew ? tr("Kept with the first field that you enter.")
                                : QStringLiteral("%1 %2").arg(qstring(m_premises.address.town),
                                                              qstring(m_premises.address.postcode)));
    for (const auto& [editor, field] : m_addressFields) {
        editor->setText(qstring(field(m_premises)));
        editor->setProblem({});
    }
    sayDoubts();
    m_country->setText(coded(reg::codeOf(m_premises.country)));
    m_applianceInRooms->setText(coded(reg::codeOf(m_premises.applianceInRooms)));
    if (m_notes->isVisibleTo(m_rest)) {
        m_notes->setText(qstring(m_premises.accessNotes));
    }
    if (!m_isNew) {
        m_installations->show(m_premises.id);
        m_appliances->show(m_premises.id);
        m_people->show(m_premises.id);
        m_visits->show(m_premises.id);
        m_attachments->show("premises", m_premises.id.bytes);
        shell::orderTabs(this);
    }
}

void PremisesSheet::fillHistory() {
    m_history->setLines(historyOf(m_premises, m_context));
}

Result<void> PremisesSheet::keep(const std::function<void(reg::Premises&)>& change) {
    reg::Premises changedPremises = m_premises;
    change(changedPremises);
    if (m_isNew) {
        return make(changedPremises);
    }
    if (const auto kept = m_context.store.save(changedPremises); !kept) {
        return kept;
    }
    m_premises = changedPremises;
    m_title->setText(qstring(m_premises.address.line1));
    m_subtitle->setText(
        QStringLiteral("%1 %2").arg(qstring(m_premises.address.town), qstring(m_premises.address.postcode)));
    Q_EMIT changed(m_premises.id);
    return {};
}

Result<void> PremisesSheet::make(reg::Premises premises) {
    premises.id = {m_context.store.newId()};
    if (const auto kept = m_context.store.save(premises); !kept) {
        return kept;
    }
    reg::Installation installation;
    installation.id = {m_context.store.newId()};
    installation.premises = premises.id;
    const auto kept = m_context.store.save(installation);
    m_premises = premises;
    m_isNew = false;
    setWhole(true);
    fill();
    Q_EMIT changed(premises.id);
    return kept;
}

}  // namespace hearth::ui::premises
