// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/visit/asked_part.h"

namespace hearth::ui::shell {
class AttachmentsPart;
}

namespace hearth::ui::visit {

class WhatFirst;

/// One unsafe situation: what and where, how dangerous by the engineer's decision alone, made safe how, who
/// was told, whether it is to be reported; and its notice at once.
class SituationPart : public AskedPart {
    Q_OBJECT
  public:
    SituationPart(const SheetContext& context, const PartRef& ref, QWidget* parent);
    void refresh() override;
    void setReadOnly(bool readOnly) override;

  Q_SIGNALS:
    void noticeWanted();

  private:
    void addWhat();
    void addCommonlySeen();
    void showCommonlySeen();
    void showReportBy();
    void addSituationField(shell::Fields* fields, std::optional<record::Field> field, input::Editor* editor,
                           const QString& label, FieldBinding binding, int span);
    [[nodiscard]] reg::SituationId id() const { return {subject().id}; }

    WhatFirst* m_whatFirst;
    shell::AttachmentsPart* m_pictures;
    shell::KeyButton* m_notice;
    shell::Text* m_seen = nullptr;
    shell::Text* m_reportBy = nullptr;
    shell::KeyButton* m_seenAll = nullptr;
    bool m_showsAllSeen = false;
};

}  // namespace hearth::ui::visit
