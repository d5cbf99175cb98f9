// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shell/place.h"

#include <QStringList>

#include <vector>

namespace hearth::ui::records {

/// Gives a record out: by mail, as a file, on paper, as the wording of a text message; and notes to whom.
class Sender {
  public:
    Sender(const shell::Context& context, QWidget* over) : m_context(context), m_over(over) {}

    /// Asks to whom and how. False: stepped back, or it failed and that was told.
    bool send(const store::IssuedRecord& record, const paper::PageOptions& options) const;
    /// Begins a mail to each who was given an earlier one by a mail address; gives those without, who are to
    /// be told otherwise.
    [[nodiscard]] QStringList sendToHolders(const store::IssuedRecord& record,
                                            const std::vector<record::CopyHolder>& holders) const;
    /// Writes the PDF as it was issued, and its signature beside it, and notes that.
    bool saveAs(const store::IssuedRecord& record, const QString& path, const QString& to) const;
    void note(const store::IssuedRecord& record, const record::Sending& sending) const;

  private:
    struct Recipient {
        QString name;
        QString mail;
        QString telephone;
    };
    [[nodiscard]] std::optional<Recipient> askRecipient(const store::IssuedRecord& record) const;
    bool mailTo(const store::IssuedRecord& record, const QString& address) const;
    bool mail(const store::IssuedRecord& record, const Recipient& to) const;
    bool saveInto(const store::IssuedRecord& record, const Recipient& to) const;
    bool print(const store::IssuedRecord& record, const paper::PageOptions& options,
               const Recipient& to) const;
    bool copyMessage(const store::IssuedRecord& record, const Recipient& to) const;
    [[nodiscard]] bool failed(const QString& title, const Error& error) const;

    const shell::Context& m_context;
    QWidget* m_over;
};

}  // namespace hearth::ui::records
