// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/visit/part_view.h"

#include <span>

namespace hearth::ui::shell {
class KeyButton;
}

namespace hearth::ui::visit {

/// Items that stand together, in the order of the work; the heading is a text of the context "AskedPart".
struct ItemGroup {
    const char* heading = "";
    std::span<const reg::Item> items;
};

/// The order in which the items of an appliance, of the larger pipework, of an investigation, of a situation
/// and of the hand-over are worked through. Which of them a visit asks for is not said here.
[[nodiscard]] std::span<const ItemGroup> applianceGroups();
[[nodiscard]] std::span<const ItemGroup> largerGroups();
[[nodiscard]] std::span<const ItemGroup> investigationGroups();
[[nodiscard]] std::span<const ItemGroup> situationGroups();
[[nodiscard]] std::span<const ItemGroup> handOverGroups();

/// A part whose fields follow from what the visit's records ask for: made for what they ask at all, shown
/// when it applies. What may be left out comes into view with one key.
class AskedPart : public PartView {
    Q_OBJECT
  public:
    AskedPart(const SheetContext& context, const PartRef& ref, QWidget* parent);

    [[nodiscard]] bool isUpToDate() const override;
    void refresh() override;
    void toggleMore() override;

  protected:
    /// Those items of the groups that are asked for.
    void addGroups(std::span<const ItemGroup> groups);
    /// Room for what no group has: what was entered all the same, and what a finding on the part's subject
    /// lacks; and the button for what may be left out.
    void addMore();
    [[nodiscard]] bool isShown(const FieldKey& key) const override;
    [[nodiscard]] bool showsAll() const { return m_all; }

  private:
    struct Section {
        QWidget* heading = nullptr;  // nothing: it has none
        QWidget* grid = nullptr;
        std::vector<SheetField*> fields;
    };
    void addSection(const ItemGroup& group);
    void addRest();
    [[nodiscard]] bool isLacking(reg::Item item) const;

    [[nodiscard]] bool isInGroups(reg::Item item) const;

    std::vector<reg::Item> m_asked;  // of the part's kind of subject, when it was made
    std::vector<ItemGroup> m_groups;
    std::vector<Section> m_sections;
    shell::Fields* m_rest = nullptr;
    shell::KeyButton* m_more = nullptr;
    bool m_all = false;
};

}  // namespace hearth::ui::visit
