// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/visit/leak_hunt_area.h"

#include "ui/shell/kit.h"
#include "ui/words/leak_hunt_words.h"

#include <QVBoxLayout>

#include <algorithm>

namespace hearth::ui::visit {

LeakHuntArea::LeakHuntArea(const SheetContext& context, QWidget* parent)
    : QWidget(parent), m_context(context) {
    auto* lines = new QVBoxLayout(this);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->setSpacing(look::kGap);
    lines->addWidget(shell::headingText(tr("Looking for the leak: the tests compared"), this));
    setObjectName(QStringLiteral("leakHunt"));
    m_meaning = shell::namedText("leakHuntMeaning", look::TypeRole::Title, look::Role::Ink, this);
    m_places = shell::namedText("leakHuntPlaces", look::TypeRole::Body, look::Role::Ink, this);
    m_tests = shell::namedText("leakHuntTests", look::TypeRole::Body, look::Role::SoftInk, this);
    m_beside = shell::namedText("leakHuntBeside", look::TypeRole::Small, look::Role::SoftInk, this);
    for (auto* text : {m_meaning, m_places, m_tests, m_beside}) {
        lines->addWidget(text);
    }
    hide();
}

/// One test without a repeat has nothing to be compared with.
bool LeakHuntArea::isWanted() const {
    const auto& file = m_context.model.file();
    return file.tests.size() > 1 || (file.tests.size() == 1 && file.find(reg::subject(file.tests.front().id),
                                                                         reg::Item::RetestEnd) != nullptr);
}

void LeakHuntArea::refresh() {
    if (!isWanted()) {
        hide();
        return;
    }
    const auto& file = m_context.model.file();
    const auto& words = m_context.window.words;
    const auto& hunt = m_context.model.leakHunt();
    // Something was typed as shut, and could not be used: said, not left out.
    const bool isTold =
        hunt.isOne() || std::any_of(hunt.tests.begin(), hunt.tests.end(), [](const auto& test) {
            return test.lacks == judging::HuntLacks::PipesShut || !test.shut.empty();
        });
    setVisible(isTold);
    if (!isTold) {
        return;
    }
    m_meaning->setText(words::leakHuntMeaning(hunt, file, words));
    const auto places = words::leakHuntPlaces(hunt, file, words);
    m_places->setText(places.join(u'\n'));
    m_places->setVisible(!places.isEmpty());
    const auto table = words::leakHuntTable(hunt, file, words);
    m_beside->setText(QString::fromStdString(table.note));
    QStringList tests;
    for (const auto& row : table.rows) {
        tests << tr("%1: shut off %2; volume %3; leak %4")
                     .arg(QString::fromStdString(row[0]), QString::fromStdString(row[1]),
                          QString::fromStdString(row[2]), QString::fromStdString(row[3]));
    }
    m_tests->setText(tests.join(u'\n'));
}

QString LeakHuntArea::meaning() const {
    return isHidden() ? QString() : m_meaning->text();
}

}  // namespace hearth::ui::visit
