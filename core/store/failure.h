// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <SQLiteCpp/Exception.h>

#include <exception>
#include <string>

#include "base/result.h"

// Not for other folders.
namespace wetfront::store_detail {

/// What a failure of the database means to a person: what happened, what is safe, what to do.
[[nodiscard]] Error failure(const std::string& item, const SQLite::Exception& cause);

/// The same for a call of the operating system that failed with `number` (errno).
[[nodiscard]] Error system_failure(const std::string& item, int number);

/// Runs `work`, which returns a Result; no exception leaves. An open transaction of `work` is rolled back by
/// its owner.
template <class Work>
[[nodiscard]] auto guarded(const std::string& item, Work&& work) -> decltype(work()) {
    try {
        return work();
    } catch (const SQLite::Exception& cause) {
        return failure(item, cause);
    } catch (const std::exception& cause) {
        // What the file holds makes no sense.
        return storage_error(item, cause.what(),
                             "the file is damaged or was written by another version; leave it and the -wal "
                             "file beside it as they are, and go back to a good copy");
    }
}

}  // namespace wetfront::store_detail
