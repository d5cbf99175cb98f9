// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper/square_code.h"

#include <qrencode.h>

#include <memory>

namespace hearth::ui::paper {

namespace {

struct FreeCode {
    void operator()(QRcode* code) const { QRcode_free(code); }
};

/// Bit 0 of each byte says dark (libqrencode's documentation of QRcode::data).
bool isDark(const QRcode& code, int x, int y) {
    return (code.data[y * code.width + x] & 1U) != 0;
}

void addRow(SquareCode& square, const QRcode& code, int y) {
    int begin = -1;
    for (int x = 0; x <= code.width; ++x) {
        const bool dark = x < code.width && isDark(code, x, y);
        if (dark && begin < 0) {
            begin = x;
        } else if (!dark && begin >= 0) {
            square.runs.append(QRect(begin, y, x - begin, 1));
            begin = -1;
        }
    }
}

}  // namespace

SquareCode squareCode(const QByteArray& text) {
    const std::unique_ptr<QRcode, FreeCode> code(QRcode_encodeString8bit(text.constData(), 0, QR_ECLEVEL_M));
    SquareCode square;
    if (!code) {
        return square;
    }
    square.size = code->width;
    for (int y = 0; y < code->width; ++y) {
        addRow(square, *code, y);
    }
    return square;
}

}  // namespace hearth::ui::paper
