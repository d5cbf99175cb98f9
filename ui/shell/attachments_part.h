// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/attachments.h"
#include "ui/shell/kit.h"
#include "ui/shell/place.h"

#include <QStringList>

#include <optional>

class QCheckBox;
class QMimeData;

namespace hearth::ui::shell {

class LineList;

/// The photographs and papers of whatever the register holds: added by file, drag or paste, seen small and
/// larger, described, opened and taken away.
class AttachmentsPart : public QWidget {
    Q_OBJECT
  public:
    /// `nameContext` goes before the accessible names where several stand in one window.
    AttachmentsPart(const Context& context, const QString& nameContext, QWidget* parent);
    void show(const std::string& ownerTable, const UuidBytes& owner);
    /// The same on a visit, whose records can show the pictures.
    void showOnVisit(const std::string& ownerTable, const UuidBytes& owner, reg::VisitId visit);
    void setReadOnly(bool readOnly);
    /// Adds files; what can't be kept is told, the others are kept.
    void addFiles(const QStringList& paths);

  protected:
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dropEvent(QDropEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    void makeButtons(QVBoxLayout* lines);
    void chooseFiles();
    void addFrom(const QMimeData& data);
    [[nodiscard]] Result<void> addOne(const QString& name, const QByteArray& bytes);
    void refresh();
    void showCurrent();
    void chooseForRecord(bool shown);
    void open();
    void remove();
    [[nodiscard]] const reg::Attachment* current() const;

    Context m_context;
    std::string m_ownerTable;
    UuidBytes m_owner{};
    std::vector<reg::Attachment> m_kept;
    LineList* m_list;
    QLabel* m_preview;
    input::Editor* m_note;
    QCheckBox* m_keepPlace;
    QCheckBox* m_inRecord;
    std::optional<reg::VisitId> m_visit;
    bool m_readOnly;
    KeyButton* m_add = nullptr;
    KeyButton* m_open = nullptr;
    KeyButton* m_remove = nullptr;
};

}  // namespace hearth::ui::shell
