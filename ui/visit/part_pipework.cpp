// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/pipework/tube.h"
#include "ui/look/look.h"
#include "ui/shell/kit.h"
#include "ui/visit/parts.h"
#include "ui/visit/pipe_sketch.h"
#include "ui/visit/pipe_table.h"
#include "ui/visit/register_fields.h"
#include "ui/visit/volume_text.h"
#include "ui/words/pipe_words.h"

#include <QCoreApplication>

namespace hearth::ui::visit {

namespace {

using record::Field;
using reg::Installation;
using reg::Item;
using rulebook::FindingKind;

/// Meter and pipework: a list, seen as a sketch, with the volume that follows from it.
class PipeworkPart : public PartView {
    Q_DECLARE_TR_FUNCTIONS(hearth::ui::visit::PipeworkPart)
  public:
    PipeworkPart(const SheetContext& context, QWidget* parent);
    void refresh() override;
    void refill() override;
    void setReadOnly(bool readOnly) override;
    [[nodiscard]] input::Editor* editorFor(const FieldKey& key) const override;
    [[nodiscard]] QWidget* anchorOf(const judging::Judged& judged) const override;

  private:
    void addMeter();
    void addPipes();
    void addVolume();
    SheetField* addRegister(shell::Fields* fields, input::Editor* editor, FieldBinding binding,
                            const QString& label);
    SheetField* addFigure(shell::Fields* fields, quantity::UnitFamily family,
                          quantity::Typed Installation::*column, const QString& label);
    [[nodiscard]] bool needsMeterVolume() const;
    [[nodiscard]] QString volumeSentence() const;

    SheetField* m_meter = nullptr;
    SheetField* m_meterVolume = nullptr;
    PipeTable* m_pipes = nullptr;
    PipeSketch* m_sketch = nullptr;
    shell::Text* m_fittingsHint = nullptr;
    shell::Text* m_total = nullptr;
    shell::Text* m_sum = nullptr;
    SheetField* m_volumeTyped = nullptr;
};

PipeworkPart::PipeworkPart(const SheetContext& context, QWidget* parent)
    : PartView(context, {PartKind::Pipework}, parent) {
    addMeter();
    addPipes();
    addVolume();
    connect(m_pipes, &PipeTable::rowsChanged, this, &PartView::stopsChanged);
    connect(m_pipes, &PipeTable::left, this, [this] {
        if (m_volumeTyped != nullptr) {
            shell::focusOn(m_volumeTyped->editor());
        }
    });
}

SheetField* PipeworkPart::addRegister(shell::Fields* fields, input::Editor* editor, FieldBinding binding,
                                      const QString& label) {
    return addField(fields, new SheetField(editor, {}, std::move(binding), words()), label, 2);
}

SheetField* PipeworkPart::addFigure(shell::Fields* fields, quantity::UnitFamily family,
                                    quantity::Typed Installation::*column, const QString& label) {
    return addRegister(fields, input::makeQuantityEditor(fields, family), installationFigure(model(), column),
                       label);
}

void PipeworkPart::addMeter() {
    auto* fields = addFields();
    const reg::SubjectRef installation = reg::subject(model().file().installation.id);
    const auto keyed = [&](Field field, input::Editor* editor, FieldBinding binding, const QString& label) {
        return addField(
            fields, new SheetField(editor, {std::nullopt, field, installation}, std::move(binding), words()),
            label, 2);
    };
    keyed(Field::InstallationGas, input::makeListEditor(fields, gasChoices(words())),
          installationGas(model()), tr("Gas"));
    m_meter = keyed(Field::InstallationMeter, input::makeListEditor(fields, meterChoices(words())),
                    installationText(model(), &Installation::meterCode), tr("Meter"));
    addRegister(fields, input::makeTextEditor(fields), installationText(model(), &Installation::meterSerial),
                tr("Meter serial"));
    addFigure(fields, quantity::UnitFamily::Pressure, &Installation::operatingPressure,
              tr("Operating pressure at the meter"));
    addFigure(fields, quantity::UnitFamily::Pressure, &Installation::supplyPressure,
              tr("Highest supply pressure"));
    m_meterVolume = addFigure(fields, quantity::UnitFamily::Volume, &Installation::meterVolume,
                              tr("Meter's volume, from its plate"));
    addRegister(fields, input::makeTextEditor(fields), installationText(model(), &Installation::meterPlace),
                tr("Where the meter is"));
    addRegister(fields, input::makeTextEditor(fields),
                installationText(model(), &Installation::controlValvePlace),
                tr("Where the emergency control valve is"));
}

void PipeworkPart::addPipes() {
    addHeading(tr("Pipework"));
    addWidget(shell::softText(
        tr("15 or 22 cu is copper; 25 steel, 1 in, 32 pe for the rest. Alt+Down lists the tubes, "
           "Ctrl+Delete removes a row, Enter in the empty row goes on."),
        this));
    m_fittingsHint = shell::softText(tr("Fittings: 3 elbows 1 tee, in short 3e 1t; b is a bend, 45 one of "
                                        "45\u00B0; or what they are worth, "
                                        "1.5 m; or none. On the sketch, + and \u2212 zoom, 0 goes back."),
                                     this);
    addWidget(m_fittingsHint);
    m_pipes = new PipeTable(context(), this);
    m_pipes->setReadOnly(model().isReadOnly());
    addWidget(m_pipes);
    m_sketch = new PipeSketch(this);
    addWidget(m_sketch);
}

void PipeworkPart::addVolume() {
    auto* row = new QWidget(this);
    auto* line = new QHBoxLayout(row);
    line->setContentsMargins(0, look::kGap, 0, 0);
    auto* figures = new QVBoxLayout;
    figures->setSpacing(2);
    auto* caption =
        new shell::Text(tr("Volume of the part under test"), look::TypeRole::Label, look::Role::SoftInk, row);
    m_total = new shell::Text({}, look::TypeRole::Title, look::Role::Ink, row);
    m_sum = shell::softText({}, row);
    figures->addWidget(caption);
    figures->addWidget(m_total);
    figures->addWidget(m_sum);
    line->addLayout(figures, 4);
    auto* fields = new shell::Fields(1, row);
    line->addWidget(fields, 2, Qt::AlignTop);
    addWidget(row);
    for (const reg::Test& test : model().file().tests) {
        SheetField* field = addItemOf(fields, reg::subject(test.id), Item::TestVolumeTyped, 1);
        m_volumeTyped = m_volumeTyped == nullptr ? field : m_volumeTyped;
    }
}

bool PipeworkPart::needsMeterVolume() const {
    const Installation& installation = model().file().installation;
    const pipework::Meter* meter = pipework::meterByCode(installation.meterCode);
    const bool tableLacks =
        meter != nullptr && meter->kind != pipework::MeterKind::None && !meter->volume.has_value();
    return tableLacks || !installation.meterVolume.text.empty();
}

QString PipeworkPart::volumeSentence() const {
    const pipework::VolumeReport& volume = model().volume();
    if (volume.typedTotal) {
        return tr("As typed; the list of pipes is not counted.");
    }
    const auto part = [&](const std::optional<quantity::Volume>& known) {
        return known ? volumeText(*known, words()) : tr("not known");
    };
    return tr("meter %1 · pipes %2 · fittings %3")
        .arg(part(volume.meter), part(volume.pipes), part(volume.fittings));
}

void PipeworkPart::refill() {
    PartView::refill();
    m_pipes->refill();
}

void PipeworkPart::setReadOnly(bool readOnly) {
    PartView::setReadOnly(readOnly);
    m_pipes->setReadOnly(readOnly);
}

void PipeworkPart::refresh() {
    PartView::refresh();
    m_meterVolume->editor()->setVisible(needsMeterVolume());
    m_pipes->refresh();
    m_fittingsHint->setVisible(m_pipes->asksForEnds());
    m_sketch->draw(words::pipeDiagram({model().file(), model().volume(), &model().pipes(), words()}));
    const auto& total = model().volume().total;
    m_total->setText(total ? volumeText(*total, words()) : tr("not known yet"));
    m_sum->setText(volumeSentence());
}

input::Editor* PipeworkPart::editorFor(const FieldKey& key) const {
    if (key.field == Field::PipeOrder) {
        return m_pipes->firstOutOfOrder();
    }
    return key.field == Field::PipeOrVolume ? m_pipes->firstTube() : PartView::editorFor(key);
}

QWidget* PipeworkPart::anchorOf(const judging::Judged& judged) const {
    switch (judged.finding.kind) {
        case FindingKind::Volume:
            return m_total;
        case FindingKind::Scope:
            return m_meter->editor();
        case FindingKind::PressureDropDesign:
        case FindingKind::PressureDropMeasured:
            return m_sketch;
        default:
            return PartView::anchorOf(judged);
    }
}

}  // namespace

PartView* makePipeworkPart(const SheetContext& context, QWidget* parent) {
    return new PipeworkPart(context, parent);
}

}  // namespace hearth::ui::visit
