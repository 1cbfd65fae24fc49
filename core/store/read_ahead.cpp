// SPDX-License-Identifier: Apache-2.0
#include "store/read_ahead.h"

#include <system_error>
#include <utility>

namespace wetfront::store_detail {
namespace {

// Enough that handing over costs nothing; a sheet ends a batch, so that few of them are held at once.
constexpr std::size_t most_entries = 256;
constexpr std::size_t enough_bytes = std::size_t{1024} * 1024;

std::size_t bytes_of(const Fields& fields) {
    std::size_t bytes = 0;
    for (const auto& [name, value] : fields) {
        if (const auto* text = std::get_if<std::string>(&value)) {
            bytes += text->size();
        } else if (const auto* raw = std::get_if<Bytes>(&value)) {
            bytes += raw->bytes.size();
        }
    }
    return bytes;
}

}  // namespace

ReadAhead::ReadAhead(BundleReader reader) : reader_{std::move(reader)} {
    go_on({});
}

ReadAhead::Batch ReadAhead::read_batch(BundleReader& reader) {
    Batch batch;
    for (std::size_t bytes = 0; batch.read.size() < most_entries && bytes < enough_bytes;) {
        auto entry = reader.next();
        if (!entry || !entry.value()) {
            batch.ends = true;
            if (!entry) {
                batch.error = std::move(entry).error();
            }
            break;
        }
        bytes += bytes_of(entry.value()->content.fields);
        const bool is_written = entry.value()->is_what_was_written();
        batch.read.push_back({std::move(*entry.value()), is_written});
    }
    return batch;
}

void ReadAhead::go_on(Batch used) {
    const auto read = [this](Batch old) {
        old = {};
        return read_batch(reader_);
    };
    try {
        coming_ = std::async(std::launch::async, read, std::move(used));
    } catch (const std::system_error&) {  // no thread to be had
        coming_ = std::async(std::launch::deferred, read, Batch{});
    }
}

Result<const ReadAhead::Read*> ReadAhead::next() {
    if (taken_ == batch_.read.size() && coming_.valid()) {
        auto used = std::exchange(batch_, coming_.get());
        taken_ = 0;
        if (!batch_.ends) {
            go_on(std::move(used));
        }
    }
    if (taken_ < batch_.read.size()) {
        return &batch_.read[taken_++];
    }
    if (batch_.error) {
        return *batch_.error;
    }
    return nullptr;
}

}  // namespace wetfront::store_detail
