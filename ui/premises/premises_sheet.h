// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shell/kit.h"
#include "ui/shell/place.h"

namespace hearth::ui::shell {
class AttachmentsPart;
class LineList;
}  // namespace hearth::ui::shell

namespace hearth::ui::premises {

class AppliancesPart;
class InstallationsPart;
class PeoplePart;
class VisitsPart;

/// One premises: address, installation, people, visits, access notes, history. Each field is kept when it is
/// committed.
class PremisesSheet : public shell::Sheet {
    Q_OBJECT
  public:
    PremisesSheet(const shell::Context& context, QWidget* parent);

    void show(reg::PremisesId id);
    void showNothing();
    /// Empty; becomes premises, with a natural gas installation, with the first address field that is kept.
    void startNew();
    [[nodiscard]] bool isNew() const { return m_isNew; }
    void takeFocus();
    [[nodiscard]] rulebook::Gas gas() const;
    [[nodiscard]] reg::Country country() const { return m_premises.country; }

  Q_SIGNALS:
    /// Made, or something changed that the list shows.
    void changed(hearth::reg::PremisesId id);
    /// The premises shown went into the bin.
    void gone();

  private:
    using TextOf = std::string& (*)(reg::Premises&);
    void addHead();
    void addAddress();
    /// Says below a field what is odd about it; what was typed is kept all the same.
    void sayDoubts();
    void addAddressField(shell::Fields* fields, const QString& label, const char* name, TextOf field);
    using TakeCode = void (*)(reg::Premises&, const std::string& code);
    input::Editor* addChoice(shell::Fields* fields, const QString& label, const char* name,
                             const std::vector<input::ChoiceItem>& choices, TakeCode take);
    void addCountry();
    void addFacts();
    void addApplianceInRooms(shell::Fields* fields);
    void addNotes();
    void addHistory();
    void addBin();
    void putIntoBin();
    void fill();
    void fillHistory();
    Result<void> keep(const std::function<void(reg::Premises&)>& change);
    Result<void> make(reg::Premises premises);
    void setWhole(bool whole);

    shell::Context m_context;
    reg::Premises m_premises;
    bool m_isNew = false;
    QWidget* m_page = nullptr;
    shell::Text* m_nothing = nullptr;
    shell::Text* m_title = nullptr;
    shell::Text* m_subtitle = nullptr;
    shell::KeyButton* m_start = nullptr;
    std::vector<std::pair<input::Editor*, TextOf>> m_addressFields;
    shell::Fields* m_address = nullptr;
    input::Editor* m_country = nullptr;
    input::Editor* m_applianceInRooms = nullptr;
    QWidget* m_rest = nullptr;  // what only premises in the store have
    InstallationsPart* m_installations = nullptr;
    AppliancesPart* m_appliances = nullptr;
    PeoplePart* m_people = nullptr;
    VisitsPart* m_visits = nullptr;
    shell::AttachmentsPart* m_attachments = nullptr;
    shell::KeyButton* m_showNotes = nullptr;
    input::Editor* m_notes = nullptr;
    shell::KeyButton* m_showHistory = nullptr;
    shell::LineList* m_history = nullptr;
    shell::KeyButton* m_bin = nullptr;
};

}  // namespace hearth::ui::premises
