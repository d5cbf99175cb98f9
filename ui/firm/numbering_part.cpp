// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/firm/numbering_part.h"

namespace hearth::ui::firm {

using record::NumberForm;
using words::qstring;

namespace {

constexpr int kNumberingColumns = 3;

std::vector<input::ChoiceItem> digitChoices() {
    std::vector<input::ChoiceItem> choices;
    for (int digits = NumberForm::kLeastDigits; digits <= NumberForm::kMostDigits; ++digits) {
        choices.push_back({QString::number(digits), QString::number(digits)});
    }
    return choices;
}

}  // namespace

NumberingPart::NumberingPart(const shell::Context& context, QWidget* parent)
    : QWidget(parent), m_context(context), m_example(shell::bodyText({}, this)) {
    auto* lines = new QVBoxLayout(this);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->setSpacing(look::kGap);
    lines->addWidget(shell::headingText(tr("Record numbers"), this));
    lines->addWidget(shell::softText(
        tr("Each store has three letters of its own, drawn by lot with its first record, so that two "
           "computers never give out one number twice; within them numbers run without a gap. A change "
           "holds for the records to come; those that were issued, and their revisions, keep their number."),
        this));
    auto* fields = new shell::Fields(kNumberingColumns, this);
    m_prefix = input::makeTextEditor(fields);
    m_prefix->setLabel(tr("Before the letters"), tr("Record numbers"));
    m_prefix->setObjectName(QStringLiteral("numberPrefix"));
    m_digits = input::makeListEditor(fields, digitChoices());
    m_digits->setLabel(tr("Digits, at least"), tr("Record numbers"));
    m_digits->setObjectName(QStringLiteral("numberDigits"));
    for (auto* editor : {m_prefix, m_digits}) {
        editor->setReadOnly(m_context.store.isReadOnly());
        fields->add(editor);
        connect(editor, &input::Editor::edited, this, [this] { showExample(typed()); });
    }
    lines->addWidget(fields);
    m_example->setObjectName(QStringLiteral("numberExample"));
    m_example->setFont(shell::strongFont());
    lines->addWidget(m_example);
    shell::keepOnCommit(m_prefix, m_context.words, [this](const QString&) {
        NumberForm form = kept();
        form.prefix = typed().prefix;
        return keep(form);
    });
    shell::keepOnCommit(m_digits, m_context.words, [this](const QString&) {
        NumberForm form = kept();
        form.digits = typed().digits;
        return keep(form);
    });
}

NumberForm NumberingPart::kept() const {
    const auto firm = m_context.store.firm();
    // One that this program can't read is shown as its own form, and replaced with the first change.
    return firm ? record::numberFormFrom(firm->numberForm).value_or(NumberForm()) : NumberForm();
}

NumberForm NumberingPart::typed() const {
    return {m_prefix->text().trimmed().toUpper().toStdString(), m_digits->text().toInt()};
}

Result<void> NumberingPart::keep(const NumberForm& form) {
    const std::string text = record::numberFormText(form);
    if (!record::numberFormFrom(text)) {
        return fail(ErrorCode::NumberFormUnusable, {form.prefix});
    }
    auto firm = m_context.store.firm();
    if (!firm) {
        return tl::unexpected<Error>(firm.error());
    }
    firm->numberForm = text;
    const auto done = m_context.store.saveFirm(*firm);
    if (done) {
        m_prefix->setText(qstring(form.prefix));
        showExample(form);
    }
    return done;
}

void NumberingPart::showExample(const NumberForm& form) {
    if (!record::numberFormFrom(record::numberFormText(form))) {
        m_example->setText(tr("No number can be written so."));
        return;
    }
    const auto next = m_context.store.nextNumber();
    if (!next) {
        m_example->setText(m_context.words.error(next.error()));
        return;
    }
    const QString dots = QStringLiteral("···");
    const QString number = qstring(
        record::recordNumber(form, next->series.empty() ? dots.toStdString() : next->series, next->number));
    m_example->setText(next->series.empty() ? tr("The first record: %1, its letters drawn then").arg(number)
                                            : tr("The next record: %1").arg(number));
}

void NumberingPart::refresh() {
    const NumberForm form = kept();
    m_prefix->setText(qstring(form.prefix));
    m_prefix->setProblem({});
    m_digits->setText(QString::number(form.digits));
    m_digits->setProblem({});
    showExample(form);
}

}  // namespace hearth::ui::firm
