// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <QCryptographicHash>

#include <cstdint>
#include <functional>
#include <string>
#include <string_view>
#include <vector>

/// A PDF written object by object, so that of a file of any size only the places of its objects are held.
/// Source: ISO 32000-1 (PDF 1.7), 7.5; ISO 19005-1 (PDF/A-1), 6.1.
namespace hearth::ui::paper {

/// Takes the next bytes of a file. An error ends the writing.
using PdfSink = std::function<Result<void>(std::string_view)>;

class PdfStream {
  public:
    explicit PdfStream(PdfSink sink);

    /// A number for an object that is written later, or now. From 1.
    [[nodiscard]] int reserve();
    /// "12 0 R".
    [[nodiscard]] static std::string reference(int number);
    /// Writes one object: what stands between "obj" and "endobj".
    void write(int number, std::string_view body);
    /// 32 hexadecimal digits that follow from all that was written so far.
    [[nodiscard]] std::string fingerprint() const;
    /// Cross references and trailer. Every number that was reserved must have been written. Gives the sink's
    /// first error.
    [[nodiscard]] Result<void> finish(int root, int info);
    /// The sink's first error so far; nothing is given to it afterwards.
    [[nodiscard]] const Result<void>& state() const { return m_state; }

  private:
    void put(std::string_view bytes);

    PdfSink m_sink;
    Result<void> m_state;
    std::uint64_t m_at = 0;
    std::vector<std::uint64_t> m_places;  // of object 1, 2 …; 0: not written yet
    QCryptographicHash m_hash{QCryptographicHash::Sha256};
};

}  // namespace hearth::ui::paper
