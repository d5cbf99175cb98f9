// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QByteArray>
#include <QList>
#include <QRect>

namespace hearth::ui::paper {

/// A QR code (ISO/IEC 18004) with medium error correction: its dark modules as horizontal runs, without the
/// quiet zone.
struct SquareCode {
    int size = 0;  // modules a side; 0: the text does not fit into any code
    QList<QRect> runs;
};

[[nodiscard]] SquareCode squareCode(const QByteArray& text);

}  // namespace hearth::ui::paper
