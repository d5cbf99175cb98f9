// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/premises/party_form.h"
#include "ui/shell/kit.h"
#include "ui/shell/place.h"

class QCompleter;
class QStringListModel;

namespace hearth::ui::shell {
class LineList;
}

namespace hearth::ui::premises {

/// Who holds one role here: a name that is typed or chosen among those known, and the details of that person.
class PersonRow : public QWidget {
    Q_OBJECT
  public:
    PersonRow(const shell::Context& context, reg::RoleKind kind, QWidget* parent);
    void show(reg::PremisesId premises, const std::optional<reg::Party>& holder);
    [[nodiscard]] QWidget* details() const { return m_details; }

  Q_SIGNALS:
    void changed();

  private:
    [[nodiscard]] QWidget* makeSaveButton();
    void offerKnown();
    void toggleDetails();
    Result<void> keepName(const QString& typed);
    /// The known party that is meant; nothing when it is somebody new; an error when the person stepped back.
    Result<std::optional<reg::Party>> known(const QString& name);
    Result<void> rename(const QString& name);
    Result<void> replaceBy(reg::Party party, bool isNew);
    void showHolder();

    shell::Context m_context;
    reg::RoleKind m_kind;
    reg::PremisesId m_premises;
    std::optional<reg::Party> m_holder;
    input::Editor* m_name;
    QStringListModel* m_names;
    shell::KeyButton* m_open;
    PartyForm* m_details;
};

/// The people of a premises by role.
class PeoplePart : public QWidget {
    Q_OBJECT
  public:
    PeoplePart(const shell::Context& context, QWidget* parent);
    void show(reg::PremisesId id);

  Q_SIGNALS:
    void changed();

  private:
    void makePastButtons(QVBoxLayout* lines);
    void fillPast();
    [[nodiscard]] std::optional<reg::PartyId> pastPerson() const;

    shell::Context m_context;
    reg::PremisesId m_premises;
    shell::Text* m_problem;
    std::vector<std::pair<reg::RoleKind, PersonRow*>> m_rows;
    shell::LineList* m_past = nullptr;
    std::vector<reg::PartyId> m_pastPeople;
    shell::Text* m_pastHeading = nullptr;
    QWidget* m_pastButtons = nullptr;
};

}  // namespace hearth::ui::premises
