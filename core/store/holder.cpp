// SPDX-License-Identifier: Apache-2.0
#include "store/holder.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <fstream>
#include <system_error>

#include "base/result.h"

namespace wetfront::store_detail {

bool open_in_this_process(const std::filesystem::path& file) {
    struct stat wanted {};
    if (::stat(file.c_str(), &wanted) != 0) {
        return false;
    }
    std::error_code no_proc;
    const std::filesystem::directory_iterator descriptors{"/proc/self/fd", no_proc};
    return std::any_of(begin(descriptors), end(descriptors), [&](const auto& descriptor) {
        struct stat found {};
        return ::stat(descriptor.path().c_str(), &found) == 0 && found.st_dev == wanted.st_dev &&
               found.st_ino == wanted.st_ino;
    });
}

std::optional<std::string> locked_by(const std::filesystem::path& file) {
    struct flock lock {};
    lock.l_type = F_WRLCK;
    lock.l_whence = SEEK_SET;
    // The bytes that SQLite locks: PENDING_BYTE and the 511 behind it (sqlite.org/fileformat2.html, 1.3.1).
    lock.l_start = 0x4000'0000;
    lock.l_len = 512;
    const int descriptor = ::open(file.c_str(), O_RDONLY | O_CLOEXEC);
    if (descriptor < 0) {
        return std::nullopt;
    }
    const bool asked = ::fcntl(descriptor, F_GETLK, &lock) == 0;
    ::close(descriptor);
    if (!asked || lock.l_type == F_UNLCK || lock.l_pid <= 0) {
        return std::nullopt;
    }
    const auto process = std::to_string(lock.l_pid);
    std::string name;
    std::getline(std::ifstream{"/proc/" + process + "/comm"}, name);
    return (name.empty() ? "another program" : printable(name)) + " (process " + process + ")";
}

std::string holder_of(const std::filesystem::path& file) {
    return locked_by(file).value_or("another program");
}

}  // namespace wetfront::store_detail
