// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/visit/sheet_field.h"

#include <QWidget>

#include <optional>
#include <vector>

namespace hearth::ui::shell {
class KeyButton;
class Text;
}  // namespace hearth::ui::shell

namespace hearth::ui::visit {

class SignaturePad;

/// How one person signs the next record of a kind: drawn here, on the paper copy, or not there at all with
/// the copy left. What is given is kept at once, stroke by stroke.
class SignerPanel : public QWidget {
    Q_OBJECT
  public:
    SignerPanel(const SheetContext& context, reg::Signer signer, QWidget* parent);
    void setKind(std::optional<record::RecordKind> kind);
    void refresh();
    void setReadOnly(bool readOnly);
    [[nodiscard]] SignaturePad* pad() const { return m_pad; }

  private:
    void makeFields();
    input::Editor* addEditor(input::Editor* editor, const QString& label, const char* name);
    [[nodiscard]] reg::HandSignature given() const;
    void chooseWay(const QString& code);
    [[nodiscard]] Result<void> keep(reg::HandSignature signature);
    void takeStrokes();
    void clear();
    void say(const reg::HandSignature& signature);
    void tell(const Result<void>& kept);

    SheetContext m_context;
    reg::Signer m_signer;
    std::optional<record::RecordKind> m_kind;
    input::Editor* m_way = nullptr;
    input::Editor* m_name = nullptr;
    input::Editor* m_role = nullptr;
    input::Editor* m_copyLeft = nullptr;
    SignaturePad* m_pad = nullptr;
    shell::Text* m_state = nullptr;
    shell::KeyButton* m_clear = nullptr;
};

/// Whoever signs a record of the kind under the cursor.
class SignaturesBox : public QWidget {
    Q_OBJECT
  public:
    SignaturesBox(const SheetContext& context, QWidget* parent);
    void setKind(std::optional<record::RecordKind> kind);
    void setReadOnly(bool readOnly);
    [[nodiscard]] SignerPanel* panel(reg::Signer signer) const;

  private:
    std::vector<std::pair<reg::Signer, SignerPanel*>> m_panels;
};

}  // namespace hearth::ui::visit
