// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/register/appliance_kinds.h"
#include "ui/input/item_editor.h"
#include "ui/look/look.h"
#include "ui/shell/attachments_part.h"
#include "ui/shell/kit.h"
#include "ui/shell/plot_view.h"
#include "ui/visit/asked_part.h"
#include "ui/visit/gas_rate_clock.h"
#include "ui/visit/parts.h"
#include "ui/visit/register_fields.h"
#include "ui/visit/subject_name.h"
#include "ui/words/plot_words.h"

#include <QCoreApplication>

#include <algorithm>

namespace hearth::ui::visit {

namespace {

using record::Field;
using reg::Item;
using rulebook::Outcome;

/// One appliance: what is not known of it yet is asked first, then what was seen and read, in the order of
/// the work. Whether it is safe to use is asked of the engineer, last, and never filled in.
class AppliancePart : public AskedPart {
    Q_DECLARE_TR_FUNCTIONS(hearth::ui::visit::AppliancePart)
  public:
    AppliancePart(const SheetContext& context, const PartRef& ref, QWidget* parent);
    [[nodiscard]] bool isUpToDate() const override;
    void refresh() override;
    void setReadOnly(bool readOnly) override;
    bool toggleClock() override;

  private:
    void addKnown();
    void addRateClock();
    void addKnownField(shell::Fields* fields, Field field, input::Editor* editor, const QString& label,
                       FieldBinding binding, int span);
    void showKnown();
    [[nodiscard]] QString regulation26() const;
    [[nodiscard]] QString aboutIt() const;
    /// Its kind has a flame of its own, and it is not capped.
    [[nodiscard]] bool burns() const;
    [[nodiscard]] reg::ApplianceId id() const { return {subject().id}; }

    QString m_builtName;                         // as it stands in the fields' names
    std::vector<const SheetField*> m_askedOfIt;  // not known when the part was made
    shell::Text* m_regulation26 = nullptr;
    GasRateClock* m_rate = nullptr;
    shell::PlotView* m_combustion = nullptr;
    shell::AttachmentsPart* m_pictures = nullptr;
};

AppliancePart::AppliancePart(const SheetContext& context, const PartRef& ref, QWidget* parent)
    : AskedPart(context, ref, parent),
      m_builtName(subjectName(subject(), context.model.file(), context.window.words)) {
    addKnown();
    addRateClock();
    addGroups(applianceGroups());
    m_regulation26 = shell::bodyText({}, this);
    addWidget(m_regulation26);
    m_combustion = new shell::PlotView(this);
    addWidget(m_combustion);
    addMore();
    m_pictures = addPictures("appliances");
}

void AppliancePart::addKnown() {
    shell::Fields* fields = addFields();
    addKnownField(fields, Field::ApplianceKind,
                  input::makeListEditor(fields, input::choicesOf(Item::ApplianceKind, words())),
                  words().item(Item::ApplianceKind), applianceText(model(), id(), &reg::Appliance::kind), 3);
    addKnownField(fields, Field::AppliancePlace, input::makeTextEditor(fields), tr("Where it stands"),
                  applianceText(model(), id(), &reg::Appliance::place), 3);
    addKnownField(fields, Field::ApplianceMake, input::makeTextEditor(fields), tr("Make"),
                  applianceText(model(), id(), &reg::Appliance::make), 2);
    addKnownField(fields, Field::ApplianceModel, input::makeTextEditor(fields), tr("Model"),
                  applianceText(model(), id(), &reg::Appliance::model), 2);
    addKnownField(fields, Field::ApplianceSerial, input::makeTextEditor(fields), tr("Serial number"),
                  applianceText(model(), id(), &reg::Appliance::serial), 2);
    addKnownField(fields, Field::ApplianceFlue, input::makeChoiceEditor(fields, flueChoices(words())),
                  tr("Flue"), applianceFlue(model(), id()), 6);
    auto* owner = input::makeChoiceEditor(fields, ownerChoices(words()));
    owner->setLabel(tr("Whose it is"), m_builtName);
    fields->add(owner, 6);
    const SheetField* field = adopt(new SheetField(owner, {std::nullopt, std::nullopt, subject()},
                                                   applianceOwner(model(), id()), words()));
    if (owner->text().isEmpty()) {
        m_askedOfIt.push_back(field);
    }
}

/// It runs while the rest is looked at; what it kept stands with what the finding on the gas rate needs.
void AppliancePart::addRateClock() {
    m_rate = new GasRateClock(context(), id(), this);
    addWidget(m_rate);
    connect(m_rate, &GasRateClock::kept, this, [this] {
        if (const SheetField* field = find({Item::RateTime, std::nullopt, subject()})) {
            shell::focusOn(field->editor());
        }
    });
}

bool AppliancePart::toggleClock() {
    if (!burns() && !m_rate->isRunning()) {
        return false;
    }
    m_rate->toggle();
    return true;
}

void AppliancePart::setReadOnly(bool readOnly) {
    AskedPart::setReadOnly(readOnly);
    m_rate->setReadOnly(readOnly);
    m_pictures->setReadOnly(readOnly);
}

void AppliancePart::addKnownField(shell::Fields* fields, Field field, input::Editor* editor,
                                  const QString& label, FieldBinding binding, int span) {
    editor->setLabel(label, m_builtName);
    fields->add(editor, span);
    const SheetField* added =
        adopt(new SheetField(editor, {std::nullopt, field, subject()}, std::move(binding), words()));
    if (editor->text().isEmpty()) {
        m_askedOfIt.push_back(added);
    }
}

bool AppliancePart::isUpToDate() const {
    return AskedPart::isUpToDate() && m_builtName == subjectName(subject(), model().file(), words());
}

/// What is known of it stands in one line; what was not is asked, and all of it with "more".
void AppliancePart::showKnown() {
    for (const SheetField* field : fields()) {
        if (!field->key().item) {
            const bool asked = std::find(m_askedOfIt.begin(), m_askedOfIt.end(), field) != m_askedOfIt.end();
            const bool meant = field->key().field != Field::ApplianceFlue || burns();
            field->editor()->setVisible(meant && (asked || showsAll()));
        }
    }
    setTitle(subjectName(subject(), model().file(), words()));
    setSubtitle(aboutIt());
}

bool AppliancePart::burns() const {
    const auto& all = model().file().appliances;
    const auto at =
        std::find_if(all.begin(), all.end(), [&](const reg::Appliance& one) { return one.id == id(); });
    return at != all.end() && reg::burnsGas(at->kind) && !reg::isCapped(model().file(), subject());
}

QString AppliancePart::aboutIt() const {
    const auto& all = model().file().appliances;
    const auto at =
        std::find_if(all.begin(), all.end(), [&](const reg::Appliance& one) { return one.id == id(); });
    if (at == all.end()) {
        return {};
    }
    const auto choice = [](const std::vector<input::ChoiceItem>& choices, std::string_view code) {
        for (const input::ChoiceItem& one : choices) {
            if (one.code == shell::coded(code)) {
                return one.label;
            }
        }
        return QString();
    };
    QStringList parts{QString::fromStdString(at->make), QString::fromStdString(at->model),
                      QString::fromStdString(at->serial), choice(flueChoices(words()), reg::codeOf(at->flue)),
                      choice(ownerChoices(words()), reg::codeOf(at->owner))};
    parts.removeAll(QString());
    return parts.join(QStringLiteral(" \u00B7 "));
}

QString AppliancePart::regulation26() const {
    const judging::Judged* judged = finding(rulebook::FindingKind::Regulation26);
    if (judged == nullptr) {
        return {};
    }
    switch (judged->finding.outcome) {
        case Outcome::Pass:
            return tr("Regulation 26(9): satisfied");
        case Outcome::Fail:
            return tr("Regulation 26(9): not satisfied");
        case Outcome::LookAgain:
            return tr("Regulation 26(9): to be looked at again");
        case Outcome::NoVerdict:
            break;
    }
    return tr("Regulation 26(9): not yet satisfied");
}

void AppliancePart::refresh() {
    AskedPart::refresh();
    showKnown();
    m_rate->setAsked(burns());
    m_regulation26->setText(regulation26());
    m_regulation26->setVisible(!m_regulation26->text().isEmpty());
    m_combustion->show(words::combustionPlots({model().file(), model().findings(), words()}, id()));
}

}  // namespace

PartView* makeAppliancePart(const SheetContext& context, const PartRef& ref, QWidget* parent) {
    return new AppliancePart(context, ref, parent);
}

}  // namespace hearth::ui::visit
