// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/window.h"
#include "tests/ui/support/firm_bench.h"
#include "tests/ui/support/walker.h"
#include "ui/input/choice_field.h"
#include "ui/visit/sheet.h"
#include "ui/visit/sheet_model.h"
#include "ui/visit/sheet_paper.h"
#include "ui/visit/visits_place.h"

#include <QApplication>
#include <QComboBox>
#include <QTest>

#include <gtest/gtest.h>
#include <iostream>
#include <map>

namespace hearth::testing {

/// What somebody answers in one part of the sheet: choices by their code, all else as it is typed.
struct PartAnswers {
    std::map<reg::Item, std::string> items = {};
    std::map<record::Field, std::string> fields = {};
    /// Rooms, or readings in rooms, one after the other.
    std::vector<std::map<reg::Item, std::string>> rows = {};
};

/// Somebody at the program's own window with a keyboard and nothing else, who knows the sheet: Enter from
/// field to field, Page Down over parts with nothing to do and once a part is filled in, Ctrl+E where more is
/// to be entered than is asked.
class VisitDriver {
  public:
    using Part = std::pair<ui::visit::PartKind, int>;
    std::map<Part, PartAnswers> answers;

    explicit VisitDriver(FirmBench& bench, reg::VisitId visit) : m_firm(bench) {
        const app::Surroundings surroundings{bench.clock, bench.words, bench.dialogs, bench.printing};
        m_window = app::makeMainWindow(*bench.store, surroundings);
        m_window->resize(1024, 600);
        m_window->show();
        m_window->activateWindow();
        EXPECT_TRUE(QTest::qWaitForWindowActive(m_window.get(), 20000));
        m_window->openVisit(visit);
        QApplication::processEvents();
    }

    [[nodiscard]] ui::visit::VisitsPlace* place() const {
        return dynamic_cast<ui::visit::VisitsPlace*>(m_window->placeInView());
    }
    [[nodiscard]] ui::visit::VisitSheetModel& model() const { return *place()->model(); }
    [[nodiscard]] const reg::VisitFile& file() const { return model().file(); }

    void press(Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier) {
        ++m_beyond;
        QTest::keyClick(QApplication::focusWidget(), key, modifiers);
        for (int round = 0; round < 4; ++round) {
            QApplication::processEvents();
        }
    }
    void type(const QString& text) {
        for (const QChar letter : text) {
            ++m_values;
            const int key = letter.isLetterOrNumber() ? letter.toUpper().unicode() : 0;
            QTest::sendKeyEvent(QTest::Click, QApplication::focusWidget(), static_cast<Qt::Key>(key),
                                QString(letter), Qt::NoModifier);
        }
    }
    /// A value and Enter.
    void line(const QString& text) {
        type(text);
        ++m_entries;
        press(Qt::Key_Return);
    }
    /// The kinds of visit, in the field that a new visit opens at.
    void chooseKinds(std::initializer_list<reg::Item> kinds) {
        const auto* field = qobject_cast<ui::input::ChoiceField*>(QApplication::focusWidget());
        ASSERT_NE(field, nullptr) << described(QApplication::focusWidget());
        for (const reg::Item kind : kinds) {
            pick(*field, QString::fromUtf8(reg::infoOf(kind).code.data()));
            ++m_entries;
        }
    }

    /// Through the sheet to its end, or to the part given.
    void fillIn(std::optional<Part> until = std::nullopt) {
        for (int guard = 0; guard < 900; ++guard) {
            const At now = at();
            ASSERT_NE(now.part, nullptr) << "the keyboard left the sheet";
            const Part here = partOf(now.part);
            if (here.first == ui::visit::PartKind::Records || here == until) {
                return;
            }
            if (answers.count(here) == 0 || isFilled(now.part)) {
                press(Qt::Key_PageDown);
                continue;
            }
            if (now.field == nullptr || !answer(now)) {
                lacksInView(now.part) ? press(Qt::Key_Return) : press(Qt::Key_E, Qt::ControlModifier);
            }
        }
        FAIL() << "the end of the sheet was not reached; at " << described(QApplication::focusWidget());
    }

    /// Every record that the visit owes can be issued.
    void expectNothingMissing() const {
        for (const auto& missing : model().missing()) {
            ADD_FAILURE() << m_firm.words.missing(missing).toStdString();
        }
    }
    void report(const char* what) const {
        std::cout << what << ": " << m_entries << " entries, " << m_beyond << " key strokes beyond the "
                  << m_values << " characters of the values\n";
    }
    [[nodiscard]] int beyond() const { return m_beyond; }
    [[nodiscard]] int entries() const { return m_entries; }

  private:
    struct At {
        ui::visit::PartView* part = nullptr;
        ui::visit::SheetField* field = nullptr;
    };
    [[nodiscard]] At at() const {
        QWidget* focus = QApplication::focusWidget();
        for (auto* part : place()->sheet()->paper()->parts()) {
            if (!part->isAncestorOf(focus)) {
                continue;
            }
            for (auto* field : part->fields()) {
                if (field->editor()->focusTarget() == focus) {
                    return {part, field};
                }
            }
            return {part, nullptr};
        }
        return {};
    }
    [[nodiscard]] static Part partOf(const ui::visit::PartView* part) {
        return {part->ref().kind, static_cast<int>(part->ref().index)};
    }

    /// What is to stand in a field; empty: nothing.
    [[nodiscard]] QString wantedIn(const ui::visit::PartView* part, const ui::visit::FieldKey& key) const {
        const auto mine = answers.find(partOf(part));
        if (mine == answers.end()) {
            return {};
        }
        const PartAnswers& all = mine->second;
        if (key.field) {
            const auto found = all.fields.find(*key.field);
            return found == all.fields.end() ? QString() : QString::fromStdString(found->second);
        }
        if (!key.item) {
            return {};
        }
        const bool isRow = key.subject.kind == reg::SubjectKind::Room;
        const std::size_t row = isRow ? rowOf(part, key.subject) : 0;
        if (isRow && row >= all.rows.size()) {
            return {};
        }
        const auto& items = isRow ? all.rows[row] : all.items;
        const auto found = items.find(*key.item);
        return found == items.end() ? QString() : QString::fromStdString(found->second);
    }
    /// The row of a room; one that nobody has begun yet stands after the others.
    [[nodiscard]] std::size_t rowOf(const ui::visit::PartView* part, const reg::SubjectRef& room) const {
        const auto there =
            part->ref().kind == ui::visit::PartKind::Rooms ? file().rooms() : file().roomReadings();
        return static_cast<std::size_t>(std::find(there.begin(), there.end(), room) - there.begin());
    }
    [[nodiscard]] bool lacks(const ui::visit::PartView* part, const ui::visit::SheetField* field) const {
        return field->editor()->text().isEmpty() && !wantedIn(part, field->key()).isEmpty();
    }
    [[nodiscard]] bool isFilled(const ui::visit::PartView* part) const {
        return std::none_of(part->fields().begin(), part->fields().end(),
                            [&](const auto* field) { return lacks(part, field); });
    }
    [[nodiscard]] bool lacksInView(const ui::visit::PartView* part) const {
        return std::any_of(part->fields().begin(), part->fields().end(), [&](const auto* field) {
            return !field->editor()->isHidden() && lacks(part, field);
        });
    }

    /// Answers the field that has the keyboard; false: there is nothing to say in it.
    [[nodiscard]] bool answer(const At& now) {
        const QString wanted = lacks(now.part, now.field) ? wantedIn(now.part, now.field->key()) : QString();
        if (wanted.isEmpty()) {
            return false;
        }
        QWidget* focus = QApplication::focusWidget();
        if (const auto* choice = qobject_cast<ui::input::ChoiceField*>(focus)) {
            pick(*choice, wanted);
        } else if (const auto* list = qobject_cast<QComboBox*>(focus)) {
            pickFromList(*list, wanted);
        } else {
            type(wanted);
        }
        ++m_entries;
        if (QApplication::focusWidget() == focus) {
            press(Qt::Key_Return);
        }
        return true;
    }
    /// By the letter that is underlined.
    void pick(const ui::input::ChoiceField& choice, const QString& code) {
        ASSERT_FALSE(choice.letterOf(code).isEmpty())
            << "no letter for " << code.toStdString() << " in " << choice.keysInWords().toStdString();
        type(choice.letterOf(code).toLower());
    }
    /// By the beginning of its name, as far as it takes.
    void pickFromList(const QComboBox& list, const QString& code) {
        const int index = list.findData(code);
        ASSERT_GE(index, 0) << "not in the list: " << code.toStdString();
        for (const QChar letter : list.itemText(index)) {
            if (list.currentIndex() == index) {
                return;
            }
            type(QString(letter));
        }
        EXPECT_EQ(list.currentIndex(), index);
    }

    FirmBench& m_firm;
    std::unique_ptr<ui::shell::MainWindow> m_window;
    int m_beyond = 0;   // key strokes beyond the values themselves
    int m_values = 0;   // characters of the values
    int m_entries = 0;  // values
};

}  // namespace hearth::testing
