// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/judging/trace_seen.h"
#include "ui/visit/sheet_field.h"

#include <QTimer>
#include <QWidget>

#include <optional>
#include <vector>

class QVBoxLayout;

namespace hearth::ui::shell {
class KeyButton;
class LineList;
class PlotView;
class Text;
}  // namespace hearth::ui::shell

namespace hearth::ui::visit {

/// What a gauge saw of a test: the trace with its stages, the limit and the fit; what it means; readings for
/// the fitter to confirm, each by one key; and what happened when. Evidence: the sentence that the verdict is
/// by the standard's rule stands below it always. Knows no files and no wires: whoever has a trace hands it
/// over.
class TraceArea : public QWidget {
    Q_OBJECT
  public:
    TraceArea(const SheetContext& context, std::size_t test, QWidget* parent);

    /// Shows a trace, whole or as far as it has come; it is not kept yet. May be called with each reading:
    /// what it means is worked out once a second.
    void setTrace(const tightness::Trace& trace, const reg::TraceSource& source,
                  std::optional<judging::SecondGauge> second = std::nullopt);
    /// Keeps what is shown, in place of what was kept of this test and stands in no record, or beside it
    /// where that was chosen. What an issued record shows stays. Nothing to keep is no error.
    [[nodiscard]] Result<void> keep();
    /// True while what is shown is not kept.
    [[nodiscard]] bool isUnkept() const { return m_isUnkept; }
    /// Nothing: there is no trace.
    [[nodiscard]] const std::optional<judging::TraceSeen>& seen() const { return m_seen; }

    /// After judging, and after the file was read again.
    void refresh();
    void setReadOnly(bool readOnly);
    [[nodiscard]] QString meaning() const;

  Q_SIGNALS:
    /// A reading was confirmed: its field.
    void confirmed(hearth::reg::Item item);
    void said(const QString& sentence);
    /// Fields came or went.
    void stopsChanged();

  private:
    void addText();
    void addChoiceOfOld();
    void showUsed();
    void addProposals();
    void addMarks();
    [[nodiscard]] const reg::Test& test() const;
    [[nodiscard]] const reg::GaugeTrace* kept() const;
    void takeUpKept();
    void tell();
    void showAll();
    void showProposals();
    void showMarks();
    /// A copy: entering it makes the proposals anew.
    void confirm(judging::TraceProposal proposal);
    void changeMarks(const reg::TraceMarks& marks);
    void addMark();
    void removeMark();
    void removeTrace();
    void say(const Result<void>& done);

    SheetContext m_context;
    std::size_t m_test;
    bool m_isUnkept = false;
    std::optional<reg::GaugeTraceId> m_shown;  // that is kept and shown
    std::optional<judging::TraceSeen> m_seen;
    bool m_isTold = false;  // what it means is worked out
    std::vector<judging::TraceProposal> m_proposals;
    QTimer m_telling;
    QVBoxLayout* m_lines;
    QWidget* m_body;
    shell::Text* m_source;
    shell::Text* m_used;
    input::Editor* m_older;
    shell::Text* m_meaning;
    shell::Text* m_grounds;
    shell::Text* m_beside;
    shell::Text* m_refused;
    shell::PlotView* m_plots;
    QWidget* m_proposed;
    std::vector<shell::KeyButton*> m_confirm;
    shell::LineList* m_marks;
    input::Editor* m_event;
    input::Editor* m_at;
    shell::KeyButton* m_addMark;
    shell::KeyButton* m_removeMark;
    shell::KeyButton* m_keep;
    shell::KeyButton* m_remove;
};

}  // namespace hearth::ui::visit
