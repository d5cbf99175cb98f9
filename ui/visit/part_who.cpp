// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/input/item_editor.h"
#include "ui/look/look.h"
#include "ui/shell/kit.h"
#include "ui/visit/found_before.h"
#include "ui/visit/joined.h"
#include "ui/visit/parts.h"
#include "ui/visit/register_fields.h"
#include "ui/visit/wanted.h"

#include <QCoreApplication>
#include <QPushButton>

#include <algorithm>

namespace hearth::ui::visit {

namespace {

using record::Field;
using reg::Item;

/// Who and where: what is known stands there, what is not is asked for.
class WhoPart : public PartView {
    Q_DECLARE_TR_FUNCTIONS(hearth::ui::visit::WhoPart)
  public:
    WhoPart(const SheetContext& context, QWidget* parent);
    void refresh() override;
    [[nodiscard]] input::Editor* editorFor(const FieldKey& key) const override;

  protected:
    [[nodiscard]] bool isShown(const FieldKey& key) const override;

  private:
    void addKinds();
    void addPremises();
    [[nodiscard]] shell::Text* addBefore(const char* name, look::Role role);
    void showBefore();
    void addPeople();
    void addRegister(shell::Fields* fields, Field field, const QString& label, FieldBinding binding,
                     int span);
    [[nodiscard]] QString premisesText() const;
    [[nodiscard]] QString instrumentsText() const;

    shell::Text* m_premises = nullptr;
    shell::Text* m_openBefore = nullptr;
    shell::Text* m_failedBefore = nullptr;
    shell::Text* m_card = nullptr;
    shell::Text* m_instruments = nullptr;
};

WhoPart::WhoPart(const SheetContext& context, QWidget* parent)
    : PartView(context, {PartKind::WhoAndWhere}, parent) {
    addPremises();
    m_openBefore = addBefore("openBefore", look::Role::Fail);
    m_failedBefore = addBefore("failedBefore", look::Role::LookAgain);
    addKinds();
    addPeople();
    addHeading(tr("Instruments"));
    m_instruments = shell::bodyText({}, this);
    addWidget(m_instruments);
    auto* used = addFields();
    addItem(used, Item::VisitAnalyser, 3);
    addItem(used, Item::VisitGauge, 3);
}

/// What the visit is for: what the sheet asks and what it can issue follow from it.
void WhoPart::addKinds() {
    auto* fields = addFields();
    auto* kinds = input::makeSeveralEditor(fields, kindChoices(words()));
    kinds->setToolTip(tr("A letter chooses a kind or takes it away; a visit may be of several."));
    const FieldKey key{std::nullopt, std::nullopt, reg::subject(model().file().visit.id)};
    addField(fields, new SheetField(kinds, key, visitKinds(model()), words()), tr("Kind of visit"), 6);
}

/// Instruments are chosen before anything is read with them.
bool WhoPart::isShown(const FieldKey& key) const {
    const bool isInstrument = key.item == Item::VisitAnalyser || key.item == Item::VisitGauge;
    if (!isInstrument) {
        return PartView::isShown(key);
    }
    const auto asked = itemsAskedOf(reg::subject(model().file().visit.id), model().file());
    return std::binary_search(asked.begin(), asked.end(), *key.item);
}

input::Editor* WhoPart::editorFor(const FieldKey& key) const {
    // The customer is the owner where nobody else is.
    const FieldKey customer{std::nullopt, Field::CustomerName, key.subject};
    return PartView::editorFor(key.field == Field::OwnerName ? customer : key);
}

void WhoPart::addPremises() {
    auto* row = new QWidget(this);
    auto* line = new QHBoxLayout(row);
    line->setContentsMargins(0, 0, 0, 0);
    m_premises = shell::bodyText({}, row);
    auto* open = new shell::KeyButton(tr("Open the premises"), shell::ButtonKind::Quiet, row);
    open->setObjectName(QStringLiteral("openPremisesButton"));
    line->addWidget(m_premises, 1);
    line->addWidget(open, 0, Qt::AlignTop);
    addWidget(row);
    connect(open, &QPushButton::clicked, this,
            [this] { context().window.navigator.openPremises(model().file().premises.id); });
}

shell::Text* WhoPart::addBefore(const char* name, look::Role role) {
    auto* text = shell::namedText(name, look::TypeRole::Body, role, this);
    addWidget(text);
    return text;
}

/// Whoever comes back knows what was left before anything is filled in.
void WhoPart::showBefore() {
    const FoundBefore found = foundBefore(model(), words());
    m_openBefore->setText(found.open.join(u'\n'));
    m_openBefore->setVisible(!found.open.isEmpty());
    m_failedBefore->setText(found.failed.join(u'\n'));
    m_failedBefore->setVisible(!found.failed.isEmpty());
}

void WhoPart::addPeople() {
    auto* fields = addFields();
    addRegister(fields, Field::CustomerName, tr("Customer"), customerName(model()), 3);
    addItem(fields, Item::VisitReference, 3);
    auto* engineer = input::makeListEditor(fields, engineerChoices(model().file()));
    const FieldKey engineerKey{std::nullopt, Field::EngineerName, reg::subject(model().file().visit.id)};
    addField(fields, new SheetField(engineer, engineerKey, visitEngineer(model()), words()), tr("Engineer"),
             3);
    auto* date = input::makeDateEditor(fields, input::todayOf(context().window.clock));
    const FieldKey dateKey{std::nullopt, Field::VisitDate, reg::subject(model().file().visit.id)};
    addField(fields, new SheetField(date, dateKey, visitDate(model(), context().window.clock), words()),
             tr("Date"), 3);
    m_card = shell::softText({}, fields);
    fields->add(m_card, 6);
    addItem(fields, Item::VisitPresent, 6);
}

void WhoPart::addRegister(shell::Fields* fields, Field field, const QString& label, FieldBinding binding,
                          int span) {
    const FieldKey key{std::nullopt, field, reg::subject(model().file().visit.id)};
    auto* editor = input::makeTextEditor(fields);
    addField(fields, new SheetField(editor, key, std::move(binding), words()), label, span);
}

QString WhoPart::premisesText() const {
    const reg::VisitFile& file = model().file();
    const reg::Address& address = file.premises.address;
    QStringList people;
    for (const auto& holder : file.people) {
        people << tr("%1: %2").arg(words().role(holder.role), QString::fromStdString(holder.party.name));
    }
    const QString where =
        joined({QString::fromStdString(address.line1), QString::fromStdString(address.line2),
                QString::fromStdString(address.town), QString::fromStdString(address.postcode)},
               QStringLiteral(", "));
    return joined({where, people.join(QStringLiteral(" \u00B7 "))}, QStringLiteral("\n"));
}

QString WhoPart::instrumentsText() const {
    QStringList lines;
    for (const reg::Instrument& instrument : model().file().instruments) {
        const auto typed = [&](const quantity::Typed& figure) {
            const auto value = figure.value();
            return value ? tr("reads to %1").arg(words().figure({*value, figure.unit})) : QString();
        };
        lines << joined(
            {QString::fromStdString(instrument.name), words().instrumentKind(instrument.kind),
             instrument.serial.empty() ? QString()
                                       : tr("serial %1").arg(QString::fromStdString(instrument.serial)),
             typed(instrument.resolution),
             !instrument.calibrationDue ? tr("no calibration date")
             : *instrument.calibrationDue < model().file().visit.date
                 ? tr("out of calibration: it ran out on %1")
                       .arg(words().shortDate(*instrument.calibrationDue))
                 : tr("calibration due %1").arg(words().shortDate(*instrument.calibrationDue))},
            QStringLiteral(" \u00B7 "));
    }
    return lines.isEmpty() ? tr("None yet: they are kept under Firm.") : lines.join(u'\n');
}

void WhoPart::refresh() {
    PartView::refresh();
    m_premises->setText(premisesText());
    showBefore();
    const reg::Engineer* engineer = model().file().engineer();
    m_card->setText(engineer == nullptr || engineer->cardNumber.empty()
                        ? QString()
                        : tr("Card %1").arg(QString::fromStdString(engineer->cardNumber)));
    m_card->setVisible(!m_card->text().isEmpty());
    m_instruments->setText(instrumentsText());
}

}  // namespace

PartView* makeWhoPart(const SheetContext& context, QWidget* parent) {
    return new WhoPart(context, parent);
}

}  // namespace hearth::ui::visit
