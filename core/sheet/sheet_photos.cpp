// SPDX-License-Identifier: Apache-2.0
#include <algorithm>

#include "sheet/blocks.h"

namespace wetfront {
namespace {

/// The finding that a photo shows, as it stands on the sheet; none where the rule finds nothing any more.
const Finding* shown_by(const Photo& photo, const SheetInputs& inputs) {
    for (const auto* findings : {&inputs.left, &inputs.found}) {
        const auto at = std::ranges::find_if(*findings, [&](const Finding& finding) {
            return finding.rule == photo.finding &&
                   (photo.bank.empty() || finding.bank.empty() || finding.bank == photo.bank);
        });
        if (at != findings->end()) {
            return &*at;
        }
    }
    return nullptr;
}

Message caption_of(const Photo& photo, std::size_t number, const SheetInputs& inputs) {
    const auto& house = inputs.file.house;
    const auto* bank = house.bank(photo.bank);
    Message caption{WF_TEXT("Photo %1. %2"),
                    {static_cast<int>(number), bank == nullptr ? WF_TEXT("House") : label_of(house, *bank)}};
    if (const auto* finding = photo.finding.empty() ? nullptr : shown_by(photo, inputs)) {
        caption = {WF_TEXT("%1: %2"), {std::move(caption), finding->message}};
    }
    return photo.note.empty() ? caption
                              : Message{WF_TEXT("%1. %2"), {std::move(caption), verbatim(photo.note)}};
}

}  // namespace

void add_photos(Blocks& blocks, const SheetInputs& inputs) {
    SheetPhotos photos;
    for (const auto& photo : inputs.file.visit.photos) {
        std::string jpeg;
        if (inputs.photos != nullptr) {
            const auto bytes = inputs.photos->find(photo.sha256);
            jpeg = bytes == inputs.photos->end() ? std::string{} : bytes->second;
        }
        photos.pictures.push_back({std::move(jpeg), caption_of(photo, photos.pictures.size() + 1, inputs)});
    }
    if (!photos.pictures.empty()) {
        blocks.emplace_back(SheetHeading{WF_TEXT("Photos")});
        blocks.emplace_back(std::move(photos));
    }
}

}  // namespace wetfront
