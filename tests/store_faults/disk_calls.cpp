// SPDX-License-Identifier: Apache-2.0
// The calls of the operating system that the store makes by itself, not through SQLite. The linker leads them
// here (--wrap); what SQLite's own library calls does not come by.
#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <cstdarg>
#include <filesystem>
#include <string>

#include "watched_disk.h"

namespace wetfront::test {
namespace {

/// True, and errno set, if the disk that lives wants this call to fail.
bool fails(DiskCall call) {
    auto* disk = WatchedDisk::present();
    const int code = disk == nullptr ? SQLITE_OK : disk->asked(call);
    if (code == SQLITE_OK) {
        return false;
    }
    errno = code == SQLITE_FULL ? ENOSPC : call == DiskCall::open ? EMFILE : EIO;
    return true;
}

void tell(DiskEvent event) {
    if (const auto* disk = WatchedDisk::present()) {
        disk->changed(std::move(event));
    }
}

std::string absolute(const char* path) {
    return std::filesystem::absolute(path).string();
}

}  // namespace
}  // namespace wetfront::test

// NOLINTBEGIN(bugprone-reserved-identifier,cert-dcl37-c,cert-dcl51-cpp): the linker's names
extern "C" {

int __real_open(const char* path, int flags, ...);
int __real_fsync(int descriptor);
int __real_mkdir(const char* path, mode_t mode);
int __real_unlink(const char* path);
int __real_rename(const char* from, const char* to);
int __real_renameat2(int from_folder, const char* from, int to_folder, const char* to, unsigned flags);

int __wrap_open(const char* path, int flags, ...) {
    va_list rest;
    va_start(rest, flags);
    const auto mode = (flags & O_CREAT) != 0 ? va_arg(rest, mode_t) : mode_t{0};
    va_end(rest);
    if (wetfront::test::fails(wetfront::test::DiskCall::open)) {
        return -1;
    }
    const bool is_new = (flags & O_CREAT) != 0 && ::access(path, F_OK) != 0;
    const int descriptor = __real_open(path, flags, mode);
    if (is_new && descriptor >= 0) {
        wetfront::test::tell({wetfront::test::DiskEvent::Kind::made, wetfront::test::absolute(path)});
    }
    return descriptor;
}

int __wrap_fsync(int descriptor) {
    using wetfront::test::DiskEvent;
    if (wetfront::test::WatchedDisk::present() == nullptr) {
        return __real_fsync(descriptor);
    }
    std::array<char, 4096> path{};
    const auto link = "/proc/self/fd/" + std::to_string(descriptor);
    if (::readlink(link.c_str(), path.data(), path.size() - 1) < 0) {
        return -1;
    }
    const bool folder = std::filesystem::is_directory(path.data());
    if (wetfront::test::fails(wetfront::test::DiskCall::sync)) {
        if (!folder) {
            wetfront::test::tell({DiskEvent::Kind::sync_failed, path.data()});
        }
        return -1;
    }
    wetfront::test::tell({folder ? DiskEvent::Kind::synced_folder : DiskEvent::Kind::synced, path.data()});
    return 0;
}

int __wrap_mkdir(const char* path, mode_t mode) {
    const int result = __real_mkdir(path, mode);
    if (result == 0) {
        wetfront::test::tell({wetfront::test::DiskEvent::Kind::made_folder, wetfront::test::absolute(path)});
    }
    return result;
}

int __wrap_unlink(const char* path) {
    if (wetfront::test::fails(wetfront::test::DiskCall::remove)) {
        return -1;
    }
    const int result = __real_unlink(path);
    if (result == 0) {
        wetfront::test::tell({wetfront::test::DiskEvent::Kind::removed, wetfront::test::absolute(path)});
    }
    return result;
}

int __wrap_rename(const char* from, const char* to) {
    if (wetfront::test::fails(wetfront::test::DiskCall::rename)) {
        return -1;
    }
    const int result = __real_rename(from, to);
    if (result == 0) {
        wetfront::test::tell({wetfront::test::DiskEvent::Kind::renamed, wetfront::test::absolute(from),
                              wetfront::test::absolute(to), 0});
    }
    return result;
}

int __wrap_renameat2(int from_folder, const char* from, int to_folder, const char* to, unsigned flags) {
    const int result = __real_renameat2(from_folder, from, to_folder, to, flags);
    if (result == 0) {
        wetfront::test::tell({wetfront::test::DiskEvent::Kind::renamed, wetfront::test::absolute(from),
                              wetfront::test::absolute(to), 0});
    }
    return result;
}

}  // extern "C"
// NOLINTEND(bugprone-reserved-identifier,cert-dcl37-c,cert-dcl51-cpp)
