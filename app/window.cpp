// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window.h"

#include "app/issue.h"
#include "ui/due/due_place.h"
#include "ui/firm/firm_place.h"
#include "ui/premises/premises_place.h"
#include "ui/records/records_place.h"
#include "ui/rulebook/rulebook_place.h"
#include "ui/visit/visits_place.h"
#include "ui/words/pseudo_translator.h"
#include "ui/workings/workings_place.h"

#include <QApplication>
#include <QIcon>
#include <QTranslator>

namespace hearth::app {

std::unique_ptr<ui::shell::MainWindow> makeMainWindow(store::Store& store, const Surroundings& surroundings) {
    ui::shell::Parts parts{store,
                           surroundings.clock,
                           surroundings.words,
                           surroundings.dialogs,
                           surroundings.printing,
                           issueThrough(store, surroundings.clock),
                           surroundings.scheme,
                           surroundings.settings,
                           surroundings.restore};
    parts.notifying = surroundings.notifying;
    auto window = std::make_unique<ui::shell::MainWindow>(parts);
    const auto& context = window->context();
    window->setPlaces({new ui::visit::VisitsPlace(context), new ui::premises::PremisesPlace(context),
                       new ui::due::DuePlace(context, store), new ui::records::RecordsPlace(context),
                       new ui::rules::RuleBookPlace(context), new ui::firm::FirmPlace(context),
                       new ui::workings::WorkingsPlace(context)});
    return window;
}

void applyLook(QApplication& application, ui::look::Scheme scheme) {
    application.setProperty("hearthScheme", static_cast<int>(scheme));
    QApplication::setStyle(QStringLiteral("fusion"));
    QApplication::setPalette(ui::look::palette(scheme));
    QApplication::setFont(ui::look::font(ui::look::TypeRole::Body));
    QApplication::setWindowIcon(QIcon(QStringLiteral(":/icons/hearthledger.png")));
    application.setStyleSheet(ui::look::styleSheet(scheme));
}

WindowLanguage::WindowLanguage(const QString& language) : m_english(std::make_unique<QTranslator>()) {
    if (m_english->load(QStringLiteral(":/i18n/hearthledger_en.qm"))) {
        QCoreApplication::installTranslator(m_english.get());
    }
    if (language == QStringLiteral("en_XA")) {
        m_pseudo = std::make_unique<ui::words::PseudoTranslator>(m_english.get());
        QCoreApplication::installTranslator(m_pseudo.get());
    }
}

WindowLanguage::~WindowLanguage() {
    if (m_pseudo) {
        QCoreApplication::removeTranslator(m_pseudo.get());
    }
    QCoreApplication::removeTranslator(m_english.get());
}

}  // namespace hearth::app
