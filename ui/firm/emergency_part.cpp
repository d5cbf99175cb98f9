// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/firm/emergency_part.h"

#include "core/register/emergency.h"

#include <algorithm>
#include <array>

namespace hearth::ui::firm {

using reg::Country;
using reg::EmergencyContact;
using rulebook::Gas;
using shell::coded;

namespace {

constexpr int kContactColumns = 2;
constexpr std::array kCountries{Country::England, Country::Wales, Country::Scotland,
                                Country::NorthernIreland};
// LPG first: its supplier's number is what is known to the firm alone.
constexpr std::array kContactGases{Gas::Propane, Gas::Butane, Gas::LpgAir, Gas::NaturalGas};

std::vector<EmergencyContact> contactsIn(const store::Store& store) {
    return store.emergencyContacts().value_or(std::vector<EmergencyContact>());
}

}  // namespace

EmergencyContactForm::EmergencyContactForm(const shell::Context& context, const QString& nameContext,
                                           QWidget* parent)
    : RegisterForm(context, kContactColumns, nameContext, parent) {
    std::vector<input::ChoiceItem> countries;
    for (const auto country : kCountries) {
        countries.push_back({coded(reg::codeOf(country)), context.words.country(country)});
    }
    std::vector<input::ChoiceItem> gases;
    for (const auto gas : kContactGases) {
        gases.push_back({coded(rulebook::gasText(gas)), context.words.gas(gas)});
    }
    addChoice<Country>(tr("Country"), "emergencyCountry", As::List, countries, &EmergencyContact::country,
                       reg::countryFromCode, reg::codeOf);
    addChoice<Gas>(tr("Gas"), "emergencyOfGas", As::List, gases, &EmergencyContact::gas,
                   rulebook::gasFromText, rulebook::gasText);
    addText(tr("Number to ring"), "emergencyNumber", &EmergencyContact::number);
    addText(tr("Whose it is"), "emergencyName", &EmergencyContact::name);
}

bool EmergencyContactForm::isTaken(const EmergencyContact& contact) const {
    const auto kept = contactsIn(context().store);
    return std::any_of(kept.begin(), kept.end(), [&](const EmergencyContact& other) {
        return other.id != contact.id && other.country == contact.country && other.gas == contact.gas;
    });
}

Result<void> EmergencyContactForm::save(EmergencyContact& changed) {
    // The store would put it in the place of the other one.
    if (isTaken(changed)) {
        return fail(ErrorCode::EmergencyContactTaken);
    }
    const bool isNew = changed.id.isNull();
    if (isNew && changed.number.empty()) {
        return {};
    }
    if (!reg::canBeDialled(changed.number)) {
        return fail(ErrorCode::EmergencyNumberUnusable, {changed.number});
    }
    return RegisterForm::save(changed);
}

EmergencyPart::EmergencyPart(const shell::Context& context, QWidget* parent)
    : QWidget(parent),
      m_context(context),
      m_lines(new QVBoxLayout(this)),
      m_problem(shell::bodyText({}, this)),
      m_add(new shell::KeyButton(tr("Add an emergency contact"), shell::ButtonKind::Plain, this)) {
    m_lines->setContentsMargins(0, 0, 0, 0);
    m_lines->setSpacing(look::kGap);
    m_lines->addWidget(shell::headingText(tr("Emergency contacts"), this));
    m_lines->addWidget(shell::softText(
        tr("They stand in what to do first (F12) and at the foot of the records to come. The gas emergency "
           "service for natural gas always stays first, with your number after it; for LPG your number "
           "stands with the one on the cylinder or tank."),
        this));
    m_problem->setInk(look::Role::Fail);
    m_problem->hide();
    m_lines->addWidget(m_problem);
    m_add->setObjectName(QStringLiteral("addEmergencyContactButton"));
    m_lines->addWidget(m_add, 0, Qt::AlignLeft);
    connect(m_add, &QPushButton::clicked, this, &EmergencyPart::add);
}

EmergencyPart::Row EmergencyPart::makeRow(std::size_t number) {
    const QString name = tr("Emergency contact %1").arg(number + 1);
    Row row{};
    row.line = new QWidget(this);
    auto* lines = new QVBoxLayout(row.line);
    lines->setContentsMargins(0, 0, 0, look::kGap);
    lines->setSpacing(look::kGap / 2);
    row.form = new EmergencyContactForm(m_context, name, row.line);
    row.form->whenKept([this, number](const EmergencyContact&) { showTold(number); });
    row.shown = shell::softText({}, row.line);
    row.shown->setObjectName(QStringLiteral("emergencyTold"));
    auto* remove = new shell::KeyButton(tr("Take it away"), shell::ButtonKind::Quiet, row.line);
    remove->setObjectName(QStringLiteral("removeEmergencyContactButton"));
    remove->setAccessibleName(tr("%1: take it away").arg(name));
    remove->setEnabled(!m_context.store.isReadOnly());
    connect(remove, &QPushButton::clicked, this, [this, number] { this->remove(number); });
    auto* below = new QHBoxLayout;
    below->setSpacing(look::kGap);
    below->addWidget(row.shown, 1);
    below->addWidget(remove, 0, Qt::AlignTop);
    lines->addWidget(row.form);
    lines->addLayout(below);
    m_lines->insertWidget(m_lines->indexOf(m_add), row.line);
    return row;
}

void EmergencyPart::showTold(std::size_t row) {
    const auto& contact = m_rows.at(row).form->value();
    m_rows.at(row).shown->setText(
        tr("What is said: ring %1.")
            .arg(m_context.words.whomToRing(contact.gas, contact.country, {contact})));
}

void EmergencyPart::refresh() {
    const auto read = m_context.store.emergencyContacts();
    m_problem->setVisible(!read);
    m_problem->setText(read ? QString() : m_context.words.error(read.error()));
    const auto kept = read.value_or(std::vector<EmergencyContact>());
    while (m_rows.size() > kept.size()) {
        delete m_rows.back().line;
        m_rows.pop_back();
    }
    while (m_rows.size() < kept.size()) {
        m_rows.push_back(makeRow(m_rows.size()));
    }
    for (std::size_t i = 0; i < kept.size(); ++i) {
        m_rows[i].form->show(kept[i]);
        showTold(i);
    }
    m_add->setEnabled(!m_context.store.isReadOnly() && nextFree().has_value());
}

std::optional<EmergencyContact> EmergencyPart::nextFree() const {
    const auto firm = m_context.store.firm();
    std::vector<Country> countries{firm ? firm->country : Country::England};
    countries.insert(countries.end(), kCountries.begin(), kCountries.end());
    const auto kept = contactsIn(m_context.store);
    for (const auto country : countries) {
        for (const auto gas : kContactGases) {
            const bool isTaken = std::any_of(kept.begin(), kept.end(), [&](const EmergencyContact& contact) {
                return contact.country == country && contact.gas == gas;
            });
            if (!isTaken) {
                EmergencyContact free;
                free.country = country;
                free.gas = gas;
                return free;
            }
        }
    }
    return std::nullopt;
}

void EmergencyPart::add() {
    if (m_rows.empty() || !m_rows.back().form->value().id.isNull()) {
        const auto contact = nextFree();
        if (!contact) {
            return;
        }
        m_rows.push_back(makeRow(m_rows.size()));
        m_rows.back().form->show(*contact);
        showTold(m_rows.size() - 1);
        shell::orderTabs(window());
    }
    m_rows.back().form->takeFocus();
}

void EmergencyPart::remove(std::size_t row) {
    const auto id = m_rows.at(row).form->value().id;
    if (!id.isNull()) {
        if (const auto done = m_context.store.removeEmergencyContact(id); !done) {
            m_context.dialogs.tell(this, tr("It was not taken away"), m_context.words.error(done.error()));
            return;
        }
        m_context.navigator.say(tr("Taken away. Ctrl+Z brings it back."));
    }
    m_add->setFocus(Qt::OtherFocusReason);
    refresh();
}

}  // namespace hearth::ui::firm
