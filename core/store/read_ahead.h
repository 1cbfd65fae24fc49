// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstddef>
#include <future>
#include <optional>
#include <string>
#include <vector>

#include "store/bundle_text.h"

// Not for other folders.
namespace wetfront::store_detail {

/// Reads a bundle's entries and proves their hashes on a thread of its own, up to a batch ahead of whoever
/// takes them in: that is a third of an import's work, and the file waits for none of it. What next() gives,
/// errors too, comes in the order of the bundle, as if it were read there and then. To be used by one thread.
class ReadAhead {
public:
    /// What the reader reads must outlive this.
    explicit ReadAhead(BundleReader reader);

    struct Read {
        BundleEntry entry;
        bool is_what_was_written = false;
    };
    /// Null behind the last one. Valid until the next call.
    [[nodiscard]] Result<const Read*> next();

private:
    struct Batch {
        std::vector<Read> read;
        std::optional<Error> error = {};  ///< behind the last of them
        bool ends = false;                ///< nothing follows
    };
    [[nodiscard]] static Batch read_batch(BundleReader& reader);
    /// The thread also frees what was taken: `used`.
    void go_on(Batch used);

    BundleReader reader_;  ///< the thread's, while there is one
    Batch batch_;
    std::size_t taken_ = 0;      ///< of the batch
    std::future<Batch> coming_;  ///< last: its end waits for the thread, which uses what is above
};

}  // namespace wetfront::store_detail
