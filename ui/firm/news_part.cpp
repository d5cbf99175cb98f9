// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/firm/news_part.h"

#include "ui/shell/overdue_news.h"

namespace hearth::ui::firm {

NewsPart::NewsPart(const shell::Context& context, QWidget* parent) : QWidget(parent), m_context(context) {
    using shell::codeOf;
    using shell::NewsWhere;
    auto* lines = new QVBoxLayout(this);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->setSpacing(look::kGap);
    lines->addWidget(shell::headingText(tr("When the program starts"), this));
    m_where = input::makeListEditor(
        this, {{codeOf(NewsWhere::WindowAndDesktop), tr("in the window, by the desktop too")},
               {codeOf(NewsWhere::Window), tr("in the window")},
               {codeOf(NewsWhere::Nowhere), tr("nowhere")}});
    m_where->setObjectName(QStringLiteral("newsWhere"));
    m_where->setLabel(tr("Say what turned overdue"));
    shell::keepOnCommit(m_where, m_context.words,
                        [this](const QString& code) { return shell::saveNewsWhere(m_context.store, code); });
    lines->addWidget(m_where);
    lines->addWidget(shell::softText(tr("Safety checks whose deadline passed since somebody last looked. The "
                                        "desktop is told how many, and no address."),
                                     this));
}

void NewsPart::refresh() {
    m_where->setReadOnly(m_context.store.isReadOnly());
    m_where->setText(shell::codeOf(shell::newsWhere(m_context.store)));
}

}  // namespace hearth::ui::firm
