// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/firm/paper_part.h"

#include "ui/shell/paper_choice.h"

namespace hearth::ui::firm {
namespace {

const QString& letterCode() {
    static const QString code = QStringLiteral("letter");
    return code;
}

}  // namespace

PaperPart::PaperPart(const shell::Context& context, QWidget* parent) : QWidget(parent), m_context(context) {
    auto* lines = new QVBoxLayout(this);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->setSpacing(look::kGap);
    lines->addWidget(shell::headingText(tr("Paper"), this));
    m_paper =
        input::makeListEditor(this, {{QStringLiteral("a4"), tr("A4")}, {letterCode(), tr("US Letter")}});
    m_paper->setObjectName(QStringLiteral("firmsPaper"));
    m_paper->setLabel(tr("Paper of records, letters and blanks"));
    shell::keepOnCommit(m_paper, m_context.words, [this](const QString& chosen) {
        return shell::keepPaper(m_context.store,
                                chosen == letterCode() ? record::Paper::Letter : record::Paper::A4);
    });
    lines->addWidget(m_paper);
    lines->addWidget(shell::softText(tr("It holds for what is issued from now on, and for the printer. What "
                                        "was issued stays as it is: printed on another paper it is made "
                                        "smaller, and nothing of it is cut off."),
                                     this));
}

void PaperPart::refresh() {
    m_paper->setReadOnly(m_context.store.isReadOnly());
    m_paper->setText(shell::firmsPaper(m_context.store) == record::Paper::Letter ? letterCode()
                                                                                 : QStringLiteral("a4"));
}

}  // namespace hearth::ui::firm
