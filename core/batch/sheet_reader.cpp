// SPDX-License-Identifier: Apache-2.0
#include "batch/sheet_reader.h"

#include <algorithm>
#include <utility>

#include "rules/rules.h"
#include "store/record_hash.h"

namespace wetfront {

void SheetReader::begin(const Id& visit) {
    visit_ = visit;
    source_.reset();
}

Result<std::optional<SheetSource>> SheetReader::read_on() {
    if (!source_) {
        WF_TRY(auto file, store_.visit_file(visit_));
        WF_TRY(const int revision, store_.revision_of(visit_));
        SheetSource source{std::move(file), revision};
        if (kind_ == SheetKind::summary) {
            return std::optional{std::move(source)};
        }
        WF_TRY(auto kept, store_.signed_sheet(visit_));
        if (kept) {
            source.kept = std::move(kept->pdf);
            return std::optional{std::move(source)};
        }
        WF_TRY(source.photos, photos_of(store_, source.file.visit));
        if (house_ != source.file.house.id) {
            WF_TRY(const auto visits, store_.visits_of(source.file.house.id));
            house_ = source.file.house.id;
            to_read_.clear();
            std::ranges::transform(visits, std::back_inserter(to_read_), &VisitSummary::visit);
            read_.clear();
            of_house_.reset();
        }
        source_ = std::move(source);
    }
    if (!to_read_.empty()) {
        WF_TRY(auto file, store_.visit_file(to_read_.back()));
        read_.push_back(std::move(file));
        to_read_.pop_back();
        return std::optional<SheetSource>{};
    }
    if (!of_house_) {
        of_house_ = std::make_shared<const std::vector<VisitFile>>(std::exchange(read_, {}));
    }
    source_->of_house = of_house_;
    return std::exchange(source_, std::nullopt);
}

Result<PhotoBytes> photos_of(const Store& store, const Visit& visit) {
    PhotoBytes photos;
    for (const auto& photo : visit.photos) {
        WF_TRY(auto jpeg, store.picture(photo.sha256));
        if (jpeg) {
            photos.emplace(photo.sha256, std::move(*jpeg));
        }
    }
    return photos;
}

SheetContent sheet_content(const SheetSource& source, SheetKind kind, WallTime now) {
    const auto& file = source.file;
    const auto timings = timings_of(file);
    const auto advice = advise(file);
    const auto found = check(file, timings, advice, WhichSettings::found);
    const auto left = check(file, timings, advice, WhichSettings::left);
    const auto issued = file.visit.is_signed() ? file.visit.signatures.back().at : now;
    auto trends = source.of_house ? trends_after(file, *source.of_house) : std::vector<FollowedTrend>{};
    return sheet_of({file, timings, advice, found, left, source.revision, issued, record_hash(file),
                     std::move(trends), &source.photos},
                    kind);
}

}  // namespace wetfront
