// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shell/kit.h"
#include "ui/shell/place.h"

#include <vector>

namespace hearth::ui::records {

/// What became of a record, above its pages: whether it is signed, what a revision changed, who still holds
/// an older one, and to whom it went.
class RecordStory : public QWidget {
    Q_OBJECT
  public:
    RecordStory(const shell::Context& context, QWidget* parent);
    void show(const store::IssuedRecord& record);
    [[nodiscard]] const std::vector<record::CopyHolder>& holders() const { return m_holders; }

  private:
    /// One heading with the lines under it; hidden while there are none.
    struct Part {
        shell::Text* heading;
        shell::Text* text;
    };
    Part addPart(const QString& heading, const char* name);
    static void setLines(const Part& part, const QStringList& lines);
    void showSignature(const store::IssuedRecord& record);
    void showChanges(const store::IssuedRecord& record);
    void showHolders(const store::IssuedRecord& record);
    void showSendings(const store::IssuedRecord& record);

    shell::Context m_context;
    std::vector<record::CopyHolder> m_holders;
    shell::Text* m_signature;
    Part m_changes;
    Part m_toTell;
    Part m_sendings;
};

}  // namespace hearth::ui::records
