// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/visit/sheet_field.h"
#include "ui/visit/sheet_paper.h"

#include <QElapsedTimer>
#include <QPointer>
#include <QWidget>

class QScrollArea;

namespace hearth::ui::shell {
class Text;
}

namespace hearth::ui::visit {

class RecordsPart;
class Spine;
class TightnessPart;

/// The visit sheet: spine, paper, margin; and the keys that go over all of it.
///
/// Enter goes to the next field, Shift+Enter to the one before, a letter that answers goes on by itself;
/// PageUp and PageDown to the part before and after, Ctrl+K into the spine, Ctrl+M into the margin and back,
/// F1 opens the source of what is judged at the field, Shift+F1 its page in the rule book, Ctrl+Enter starts
/// and stops the timed test, Ctrl+I issues, Escape leaves the sheet.
class VisitSheet : public QWidget {
    Q_OBJECT
    Q_DISABLE_COPY_MOVE(VisitSheet)
  public:
    VisitSheet(const SheetContext& context, QWidget* parent);
    ~VisitSheet() override;

    /// Where the work goes on: where it was left; on a sheet that nobody has left, the first thing missing.
    void takeFocus();
    /// Notes where the work is left, for the next time.
    void keepPlace();
    /// Commits the field under the cursor.
    void commit();
    void goTo(const PartRef& ref);
    void goTo(const record::Missing& missing);

    [[nodiscard]] SheetPaper* paper() const { return m_paper; }
    [[nodiscard]] Spine* spine() const { return m_spine; }
    [[nodiscard]] QScrollArea* scroll() const { return m_scroll; }
    [[nodiscard]] RecordsPart* recordsPart() const;
    /// The part of the test that the keyboard is at, or whose clock runs, or the last.
    [[nodiscard]] TightnessPart* tightnessPart() const;

  Q_SIGNALS:
    /// Escape: back to the list.
    void left();

  protected:
    void keyPressEvent(QKeyEvent* event) override;
    void changeEvent(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;
    bool focusNextPrevChild(bool next) override;

  private:
    void addSide();
    void fitSide();
    void rebuild();
    void bringPartsUpToDate();
    void listenTo(PartView* part);
    void goToFirm(const record::Missing& missing);
    void addSituation();
    void fileRead();
    void judgedAgain();
    void showSpine();
    void showHead();
    void orderTabs();
    void follow(QWidget* focus);
    void followGrown();
    void bringToTop(QWidget* widget);
    void step(int by);
    void openSources();
    void openRuleOf(const std::vector<input::FindingNote*>& notes);
    [[nodiscard]] std::vector<input::FindingNote*> notesOfFocus() const;
    void goToMargin();
    void stepInMargin(int by);
    bool answerKey(QKeyEvent* event);
    void goOnFrom(input::Editor* answered);
    bool goByEnter(QObject* watched, const QKeyEvent& key);
    void toggleClock();
    bool goToKeptPlace();
    bool goToKinds();
    [[nodiscard]] std::string noteOfPlace() const;
    [[nodiscard]] PartView* partOfFocus() const;
    [[nodiscard]] SheetField* fieldOfFocus() const;
    [[nodiscard]] std::vector<TightnessPart*> tightnessParts() const;

    SheetContext m_context;
    shell::Text* m_address = nullptr;
    shell::Text* m_day = nullptr;
    Spine* m_spine = nullptr;
    shell::Text* m_keys = nullptr;
    QScrollArea* m_scroll;
    SheetPaper* m_paper = nullptr;
    reg::VisitId m_builtFor;
    bool m_wentOn = false;  // the last key was an answer, which went on by itself
    QElapsedTimer m_sinceKey;
    quint64 m_keyAt = 0;          // the last key, milliseconds
    quint64 m_answeredAt = 0;     // the key of that answer
    bool m_byEnter = false;       // the last key went on, or back, from field to field
    QPointer<SheetField> m_last;  // the field that had the keyboard last
    QPointer<QWidget> m_before;   // the field that Ctrl+K and Ctrl+M left
};

}  // namespace hearth::ui::visit
