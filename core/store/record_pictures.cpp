// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/record_pictures.h"

namespace hearth::store {

bool isPicture(const reg::Attachment& attachment) {
    return attachment.mediaType == "image/jpeg" || attachment.mediaType == "image/png";
}

Result<std::vector<record::PictureOf>> picturesOf(const Store& store, const reg::VisitFile& file) {
    std::vector<reg::SubjectRef> subjects;
    for (const auto& appliance : file.appliances) {
        subjects.push_back(reg::subject(appliance.id));
    }
    for (const auto& situation : file.situations) {
        subjects.push_back(reg::subject(situation.id));
    }
    std::vector<record::PictureOf> pictures;
    for (const auto& subject : subjects) {
        const auto attachments = store.attachmentsOf(subject.id);
        if (!attachments) {
            return tl::unexpected<Error>(attachments.error());
        }
        for (const auto& one : *attachments) {
            if (one.inRecordOf != file.visit.id || !isPicture(one)) {
                continue;
            }
            auto bytes = store.attachmentBytes(one.id);
            if (!bytes) {
                return tl::unexpected<Error>(bytes.error());
            }
            pictures.push_back({subject, {{}, one.note, one.digest, one.mediaType, std::move(*bytes)}});
        }
    }
    return pictures;
}

}  // namespace hearth::store
