// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <string>
#include <string_view>

/// Pictures and papers from outside, made fit to be kept.
namespace hearth::exchange {

/// Whether the place where a picture was taken stays in it.
enum class PicturePlace { Remove, Keep };

struct Picture {
    std::string mediaType;  // "image/jpeg", "image/png", "application/pdf"
    std::string bytes;
    bool hadPlace = false;   // the file told where it was taken
    bool placeKept = false;  // and still tells
};

/// The media type by the file's first bytes, whatever its name says; empty for what is not kept.
[[nodiscard]] std::string_view mediaTypeOf(std::string_view bytes);

/// Reads a picture or paper and, unless it is to stay, takes out of it where it was taken (Exif GPS, XMP and
/// IPTC places); the image's own data is not touched. A picture without a place, and a PDF, come back byte
/// for byte. Source: Exif 2.32 section 4.6.6 (GPS attributes), XMP Specification Part 2 (exif namespace),
/// IPTC Photo Metadata Standard (location fields); read and written by the library exiv2. Errors:
/// AttachmentUnknown, AttachmentDamaged, with `name`.
[[nodiscard]] Result<Picture> readPicture(std::string_view bytes, PicturePlace place,
                                          const std::string& name);

}  // namespace hearth::exchange
