// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/due.h"
#include "ui/due/due_views.h"
#include "ui/input/editor.h"

#include <QAbstractButton>
#include <QWidget>

#include <functional>
#include <map>
#include <vector>

class QHBoxLayout;

namespace hearth::ui::due {

/// How many there are of something. Of premises in a state: pressed, the list shows these alone; Alt and a
/// digit press it too.
class CountChip : public QAbstractButton {
    Q_OBJECT
  public:
    /// Without a state: everything.
    CountChip(std::optional<calendar::DueState> state, int digit, QWidget* parent);
    /// Of something else, that is not filtered by; `key` is listened to elsewhere.
    CountChip(const QString& word, const QString& key, QWidget* parent);
    /// Nothing: it is being counted.
    void setCount(std::optional<int> count);
    void setCount(std::optional<int> count, const QString& word);
    [[nodiscard]] std::optional<int> count() const { return m_count; }
    [[nodiscard]] std::optional<calendar::DueState> state() const { return m_state; }
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override { return sizeHint(); }

  protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

  private:
    std::optional<calendar::DueState> m_state;
    QString m_word;
    QString m_key;
    [[nodiscard]] QString number() const;
    std::optional<int> m_count = 0;
};

/// Counts, filters, saved views and order, over the list.
class DueHead : public QWidget {
    Q_OBJECT
  public:
    /// What a filter can be set to, asked for when its field is entered.
    using Choices = std::function<std::vector<store::DueChoice>(store::DueBy)>;
    DueHead(Choices choices, QWidget* parent);

    /// The views that can be chosen; what is set stays.
    void offer(const std::vector<DueView>& views);
    void setCounts(const store::DueCounts& counts);
    /// Duties beside the checks, of the whole firm.
    void setDuties(const store::DutyCount& count);
    /// Shows a filter and an order without emitting anything; `view`: its name, empty for none.
    void show(const store::DueFilter& filter, store::DueSort sort, const QString& view);
    [[nodiscard]] const store::DueFilter& filter() const { return m_filter; }
    [[nodiscard]] store::DueSort sort() const { return m_sort; }
    [[nodiscard]] QString view() const { return m_view; }
    [[nodiscard]] bool isFiltered() const { return m_filter != store::DueFilter{}; }
    void setText(const QString& text);

  Q_SIGNALS:
    void changed();
    void viewChosen(const QString& name);
    void saveAsked();
    void forgetAsked();
    void dutiesAsked();

  private:
    void addChips(QWidget* row);
    void choose(std::optional<calendar::DueState> state);
    void offerIn(const QString& name, const QString& label, std::vector<input::ChoiceItem> items);
    void offerBy(store::DueBy by, const QString& name, const QString& label, const QString& all);
    void dress(const QString& name, const QString& label, input::Editor* made);
    void join(const QString& name, const QString& label, input::Editor* made);
    void take(const QString& name, const QString& code);
    void put();
    [[nodiscard]] QString codeIn(const QString& name) const;

    Choices m_choices;
    store::DueFilter m_filter;
    store::DueSort m_sort = store::DueSort::Need;
    QString m_view;
    std::vector<CountChip*> m_chips;
    CountChip* m_duties = nullptr;
    QHBoxLayout* m_fields = nullptr;
    struct Field {
        input::Editor* editor = nullptr;
        std::vector<std::pair<QString, QString>> items;
    };
    std::map<QString, Field> m_editors;
    QWidget* m_forget = nullptr;
};

}  // namespace hearth::ui::due
