// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper/pdf_stream.h"

#include <algorithm>
#include <cassert>
#include <cstdio>

namespace hearth::ui::paper {

PdfStream::PdfStream(PdfSink sink) : m_sink(std::move(sink)) {
    // Four bytes beyond ASCII say that it is binary (ISO 19005-1, 6.1.2).
    put("%PDF-1.4\n%\xE2\xE3\xCF\xD3\n");
}

int PdfStream::reserve() {
    m_places.push_back(0);
    return static_cast<int>(m_places.size());
}

std::string PdfStream::reference(int number) {
    return std::to_string(number) + " 0 R";
}

void PdfStream::put(std::string_view bytes) {
    if (!m_state) {
        return;
    }
    m_state = m_sink(bytes);
    m_at += bytes.size();
    m_hash.addData(QByteArrayView(bytes.data(), static_cast<qsizetype>(bytes.size())));
}

void PdfStream::write(int number, std::string_view body) {
    m_places.at(static_cast<std::size_t>(number - 1)) = m_at;
    put(std::to_string(number) + " 0 obj\n");
    put(body);
    put("\nendobj\n");
}

std::string PdfStream::fingerprint() const {
    return m_hash.result().toHex().left(32).toStdString();
}

Result<void> PdfStream::finish(int root, int info) {
    assert(std::find(m_places.begin(), m_places.end(), 0U) == m_places.end());
    const std::string id = fingerprint();
    const std::uint64_t start = m_at;
    const std::string size = std::to_string(m_places.size() + 1);
    put("xref\n0 " + size + "\n0000000000 65535 f \n");
    for (const std::uint64_t place : m_places) {
        char line[32];  // 20 bytes each, whatever the place
        std::snprintf(line, sizeof line, "%010llu 00000 n \n", static_cast<unsigned long long>(place));
        put(line);
    }
    put("trailer\n<< /Size " + size + " /Root " + reference(root) + " /Info " + reference(info) + " /ID [<" +
        id + "> <" + id + ">] >>\nstartxref\n" + std::to_string(start) + "\n%%EOF\n");
    return m_state;
}

}  // namespace hearth::ui::paper
