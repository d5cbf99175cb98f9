// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/register/model.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// What people sign with their hands, for one record: drawn on the screen, signed on a paper copy, or not at
/// all, with the copy left. It is no proof of who somebody is; the firm's own key signs records
/// (core/store/signing.h).
namespace hearth::reg {

using HandSignatureId = Id<struct HandSignatureTag>;

/// Who signs: the engineer, and whoever receives the record.
enum class Signer { Engineer, Receiver };
enum class SignedWay { NotSaid, Drawn, OnPaper, NotPresent };

struct HandSignature {
    HandSignatureId id;
    VisitId visit;
    std::string recordKind;  // record::kindCode
    int issue = 0;           // for the how manyeth record of that kind of the visit; the store says
    Signer signer = Signer::Engineer;
    SignedWay way = SignedWay::NotSaid;
    std::string name;
    std::string role;      // of the receiver: the code of a RoleKind; empty: not said
    std::string strokes;   // see strokesText
    std::string copyLeft;  // where the copy lies, and for whom
    Instant at{};          // when it was signed, or left
    bool operator==(const HandSignature&) const = default;
};

/// Whether it stands for a signature: something was drawn, or a name is given for one on paper, or it is said
/// that nobody was there.
[[nodiscard]] bool isSigned(const HandSignature& signature);

/// Strokes of a pen in tenths of a millimetre, from the top left corner of the pad.
struct PenPoint {
    int x = 0;
    int y = 0;
    bool operator==(const PenPoint&) const = default;
};
using PenStroke = std::vector<PenPoint>;
using PenStrokes = std::vector<PenStroke>;

/// The pad, millimetres; and so many points are more than anybody's name.
inline constexpr int kPadWidth = 80;
inline constexpr int kPadHeight = 24;
inline constexpr std::size_t kMostPenPoints = 4000;

/// "12.3,4.5 12.9,4.7;20.0,5.0": millimetres, points between blanks, strokes between semicolons.
[[nodiscard]] std::string strokesText(const PenStrokes& strokes);
/// Nothing for what is not such a text, leaves the pad or has too many points. An empty text is no strokes.
[[nodiscard]] std::optional<PenStrokes> strokesFromText(std::string_view text);

[[nodiscard]] std::string_view codeOf(Signer);
[[nodiscard]] std::string_view codeOf(SignedWay);
[[nodiscard]] std::optional<Signer> signerFromCode(std::string_view);
[[nodiscard]] std::optional<SignedWay> signedWayFromCode(std::string_view);

}  // namespace hearth::reg
