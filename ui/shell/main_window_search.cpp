// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/hits_panel.h"
#include "ui/shell/main_window.h"
#include "ui/shell/search_field.h"

// The window's search: every letter searches the place in view and finds everything there is.
namespace hearth::ui::shell {

void MainWindow::connectSearch() {
    const auto hitsShown = [this] { return m_hits != nullptr && m_hits->isVisible(); };
    connect(m_search, &QLineEdit::textEdited, this, &MainWindow::searchTyped);
    connect(m_search, &SearchField::down, this, [this, hitsShown] {
        if (hitsShown()) {
            m_hits->takeFocus();
        } else if (Place* place = placeInView()) {
            place->takeFound();
        }
    });
    connect(m_search, &SearchField::enter, this, [this, hitsShown] {
        if (hitsShown()) {
            m_hits->openFirst();
        } else if (Place* place = placeInView()) {
            place->takeFound();
        }
    });
    connect(m_search, &SearchField::left, this, [this] {
        if (Place* place = placeInView()) {
            place->takeFocus();
        }
    });
    connect(m_search, &SearchField::focusLost, this, [this] {
        if (m_hits != nullptr && !m_hits->holdsFocus()) {
            hideHits();
        }
    });
}

void MainWindow::searchTyped(const QString& text) {
    closePanel();
    if (Place* place = placeInView()) {
        place->search(text);
        if (place->findsEverything()) {
            findEverything(text);
        }
    }
}

void MainWindow::findEverything(const QString& text) {
    const auto found = m_parts.store.find(text.toStdString());
    if (!found) {
        hideHits();
        say(m_parts.words.error(found.error()));
        return;
    }
    if (m_hits == nullptr) {  // not before it is wanted: the first paint is soon enough without
        m_hits = new HitsPanel(m_search, m_parts.words, this);
        connect(m_hits, &HitsPanel::opened, this, &MainWindow::openHit);
    }
    m_hits->show(*found);
}

void MainWindow::hideHits() {
    if (m_hits != nullptr) {
        m_hits->hide();
    }
}

void MainWindow::openHit(const store::Hit& hit) {
    m_search->clear();
    if (Place* place = placeInView()) {
        place->search({});
    }
    switch (hit.kind) {
        case store::HitKind::Premises:
            openPremises({hit.row});
            break;
        case store::HitKind::Party:
            if (hit.premises) {
                openPremises(*hit.premises);
            } else {
                say(tr("%1 has no role on any premises.").arg(words::qstring(hit.title)));
            }
            break;
        case store::HitKind::Visit:
            openVisit({hit.row});
            break;
        case store::HitKind::Record:
            openRecord({hit.row});
            break;
    }
}

}  // namespace hearth::ui::shell
