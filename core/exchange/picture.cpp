// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/picture.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <exiv2/exiv2.hpp>

namespace hearth::exchange {
namespace {

constexpr std::string_view kJpeg = "image/jpeg";
constexpr std::string_view kPng = "image/png";
constexpr std::string_view kPdf = "application/pdf";

bool beginsWith(std::string_view text, std::string_view start) {
    return text.substr(0, start.size()) == start;
}

/// The names of metadata that say where: by the standards' own property names, whatever the namespace.
bool tellsPlace(const std::string& key) {
    static constexpr std::array<std::string_view, 17> kNames{".GPS",
                                                             "GPSInfo",
                                                             "Location",
                                                             "Sublocation",
                                                             "SubLocation",
                                                             "City",
                                                             "State",
                                                             "Province",
                                                             "CountryCode",
                                                             "CountryName",
                                                             ".Country",
                                                             "geo:",
                                                             "Iptc4xmpCore.Location",
                                                             "LocationShown",
                                                             "LocationCreated",
                                                             "Latitude",
                                                             "Longitude"};
    return std::any_of(kNames.begin(), kNames.end(),
                       [&](std::string_view name) { return key.find(name) != std::string::npos; });
}

template <class Data>
bool removePlace(Data& data, bool remove) {
    bool found = false;
    for (auto datum = data.begin(); datum != data.end();) {
        if (!tellsPlace(datum->key())) {
            ++datum;
            continue;
        }
        found = true;
        if (!remove) {
            break;
        }
        datum = data.erase(datum);
    }
    return found;
}

/// True when the picture told its place; takes it out when asked.
bool placeIn(Exiv2::Image& image, bool remove) {
    bool found = removePlace(image.exifData(), remove);
    found = removePlace(image.iptcData(), remove) || found;
    found = removePlace(image.xmpData(), remove) || found;
    return found;
}

std::string bytesOf(Exiv2::Image& image) {
    Exiv2::BasicIo& io = image.io();
    if (io.open() != 0) {
        throw Exiv2::Error(Exiv2::kerDataSourceOpenFailed, io.path(), "memory");
    }
    const Exiv2::IoCloser closer(io);
    const Exiv2::DataBuf buffer = io.read(static_cast<long>(io.size()));
    return {reinterpret_cast<const char*>(buffer.pData_), static_cast<std::size_t>(buffer.size_)};
}

Picture pictureOf(std::string_view bytes, std::string_view mediaType, PicturePlace place) {
    Picture picture{std::string(mediaType), std::string(bytes), false, false};
    const auto image = Exiv2::ImageFactory::open(reinterpret_cast<const Exiv2::byte*>(bytes.data()),
                                                 static_cast<long>(bytes.size()));
    image->readMetadata();
    picture.hadPlace = placeIn(*image, place == PicturePlace::Remove);
    picture.placeKept = picture.hadPlace && place == PicturePlace::Keep;
    if (picture.hadPlace && !picture.placeKept) {
        image->writeMetadata();
        picture.bytes = bytesOf(*image);
    }
    return picture;
}

}  // namespace

std::string_view mediaTypeOf(std::string_view bytes) {
    if (beginsWith(bytes, "\xFF\xD8\xFF")) {
        return kJpeg;
    }
    if (beginsWith(bytes, "\x89PNG\r\n\x1A\n")) {
        return kPng;
    }
    return beginsWith(bytes, "%PDF-") ? kPdf : std::string_view();
}

Result<Picture> readPicture(std::string_view bytes, PicturePlace place, const std::string& name) {
    const auto mediaType = mediaTypeOf(bytes);
    if (mediaType.empty()) {
        return fail(ErrorCode::AttachmentUnknown, {name});
    }
    if (mediaType == kPdf) {
        return Picture{std::string(mediaType), std::string(bytes), false, false};
    }
    try {
        // The library tells of odd pictures on the standard error; whoever adds one needs to know only
        // whether it can be kept.
        Exiv2::LogMsg::setLevel(Exiv2::LogMsg::mute);
        return pictureOf(bytes, mediaType, place);
    } catch (const std::exception&) {
        return fail(ErrorCode::AttachmentDamaged, {name});
    }
}

}  // namespace hearth::exchange
