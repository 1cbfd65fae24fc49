// SPDX-License-Identifier: Apache-2.0
#include "store/written_file.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <cstdio>

#include "store/bundle.h"
#include "store/bundle_text.h"
#include "store/draft.h"
#include "store/failure.h"
#include "store/whole_copy.h"

namespace wetfront {
namespace store_detail {
namespace {

/// An open file, closed at the end.
class Descriptor {
public:
    Descriptor(const std::filesystem::path& file, int flags)
        : number_{::open(file.c_str(), flags | O_CLOEXEC)} {}
    ~Descriptor() {
        if (number_ >= 0) {
            ::close(number_);
        }
    }
    Descriptor(const Descriptor&) = delete;
    Descriptor& operator=(const Descriptor&) = delete;
    [[nodiscard]] int number() const { return number_; }

private:
    int number_;
};

Result<void> fill(const std::filesystem::path& file, std::string_view bytes, const std::string& item) {
    const Descriptor to{file, O_WRONLY};
    if (to.number() < 0) {
        return system_failure(item, errno);
    }
    while (!bytes.empty()) {
        const auto written = ::write(to.number(), bytes.data(), bytes.size());
        if (written < 0 && errno != EINTR) {
            return system_failure(item, errno);
        }
        bytes.remove_prefix(static_cast<std::size_t>(std::max<ssize_t>(written, 0)));
    }
    return boost::outcome_v2::success();
}

Result<std::string> all_of(int descriptor, std::size_t size, const std::string& item) {
    std::string bytes(size, '\0');
    std::size_t read = 0;
    while (read < size) {
        const auto part = ::read(descriptor, bytes.data() + read, size - read);
        if (part < 0 && errno != EINTR) {
            return storage_error(item, strerrordesc_np(errno), "it was not used; check the medium");
        }
        if (part == 0) {
            break;
        }
        read += static_cast<std::size_t>(std::max<ssize_t>(part, 0));
    }
    bytes.resize(read);
    return bytes;
}

Result<void> check_reads_back(const std::filesystem::path& file, std::string_view bytes,
                              const std::string& item) {
    forget_pages(file);
    const Descriptor from{file, O_RDONLY};
    if (from.number() < 0) {
        return system_failure(item, errno);
    }
    WF_TRY(const auto read, all_of(from.number(), bytes.size() + 1, item));
    if (read != bytes) {
        return storage_error(item, "it does not hold what was written to it",
                             "the records themselves are intact; use another medium");
    }
    return boost::outcome_v2::success();
}

}  // namespace

Result<void> write_file(const std::filesystem::path& file, std::string_view bytes, IfThere if_there,
                        const std::string& item) {
    const Draft draft{file};
    WF_CHECK(draft.make(item));
    WF_CHECK(fill(draft.path(), bytes, item));
    WF_CHECK(sync(draft.path(), item));
    WF_CHECK(check_reads_back(draft.path(), bytes, item));
    if (if_there == IfThere::replace) {
        if (::rename(draft.path().c_str(), file.c_str()) != 0) {
            return system_failure(item, errno);
        }
        return sync(file.parent_path(), item);
    }
    WF_TRY(const bool placed, draft.put_in_place(file, item));
    if (!placed) {
        return storage_error(item, "there is a file of that name", "it stays; choose another name");
    }
    return boost::outcome_v2::success();
}

}  // namespace store_detail

Result<std::string> read_bundle_file(const std::filesystem::path& file) {
    const std::string item = file.string();
    // Without waiting for what is no file, a pipe or a device.
    const store_detail::Descriptor from{file, O_RDONLY | O_NOFOLLOW | O_NONBLOCK};
    if (from.number() < 0) {
        return storage_error(item, errno == ELOOP ? "it is a link" : strerrordesc_np(errno),
                             "name a file that can be read");
    }
    struct stat about {};
    if (::fstat(from.number(), &about) != 0 || !S_ISREG(about.st_mode)) {
        return storage_error(item, "it is not a file", "name a file that can be read");
    }
    const auto size = static_cast<std::size_t>(about.st_size);
    if (size > store_detail::most_bundle_bytes) {
        return bad_input(item, std::to_string(size) + " bytes",
                         "it is larger than 512 MiB, which none is that this program makes");
    }
    return store_detail::all_of(from.number(), size, item);
}

}  // namespace wetfront
