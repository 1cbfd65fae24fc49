// SPDX-License-Identifier: Apache-2.0
#include "base/whole_file.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <cstring>
#include <string>

namespace wetfront {
namespace {

FileFailure failed_with(int number) {
    switch (number) {
        case ENOSPC:
        case EDQUOT:
        case EFBIG:
            return {FileFault::no_room, number};
        case EROFS:
        case EACCES:
        case EPERM:
            return {FileFault::not_permitted, number};
        case ENOENT:
        case ENOTDIR:
        case ENODEV:
        case ENXIO:
        case EIO:
            return {FileFault::gone, number};
        default:
            return {FileFault::other, number};
    }
}

class Descriptor {
public:
    Descriptor(const std::filesystem::path& path, int flags) : number_{::open(path.c_str(), flags, 0666)} {}
    ~Descriptor() {
        if (number_ >= 0) {
            ::close(number_);
        }
    }
    Descriptor(const Descriptor&) = delete;
    Descriptor& operator=(const Descriptor&) = delete;

    [[nodiscard]] bool open() const { return number_ >= 0; }
    [[nodiscard]] int number() const { return number_; }

private:
    int number_;
};

/// A file beside its later place: gone at the end unless it was moved there.
class Beside {
public:
    explicit Beside(const std::filesystem::path& file)
        : path_{file.string() + ".unfinished-" + std::to_string(::getpid())} {
        ::unlink(path_.c_str());
    }
    ~Beside() { ::unlink(path_.c_str()); }
    Beside(const Beside&) = delete;
    Beside& operator=(const Beside&) = delete;

    [[nodiscard]] const std::filesystem::path& path() const { return path_; }

private:
    std::filesystem::path path_;
};

std::optional<FileFailure> write_all(const std::filesystem::path& path, std::string_view bytes) {
    const Descriptor file{path, O_WRONLY | O_CREAT | O_EXCL | O_NOFOLLOW | O_CLOEXEC};
    if (!file.open()) {
        return failed_with(errno);
    }
    while (!bytes.empty()) {
        const auto taken = ::write(file.number(), bytes.data(), bytes.size());
        if (taken < 0 && errno == EINTR) {
            continue;
        }
        if (taken <= 0) {
            return failed_with(taken < 0 ? errno : ENOSPC);
        }
        bytes.remove_prefix(static_cast<std::size_t>(taken));
    }
    if (::fsync(file.number()) != 0) {
        return failed_with(errno);
    }
    // So that what is read back comes from the medium and not from memory.
    ::posix_fadvise(file.number(), 0, 0, POSIX_FADV_DONTNEED);
    return std::nullopt;
}

std::optional<FileFailure> compare(const std::filesystem::path& path, std::string_view bytes) {
    const Descriptor file{path, O_RDONLY | O_NOFOLLOW | O_CLOEXEC};
    if (!file.open()) {
        return failed_with(errno);
    }
    std::array<char, 65536> part{};
    for (;;) {
        const auto read = ::read(file.number(), part.data(), part.size());
        if (read < 0 && errno == EINTR) {
            continue;
        }
        if (read < 0) {
            return failed_with(errno);
        }
        const auto size = static_cast<std::size_t>(read);
        if (std::string_view{part.data(), size} != bytes.substr(0, size)) {
            return FileFailure{FileFault::differs};
        }
        bytes.remove_prefix(size);
        if (read == 0) {
            return bytes.empty() ? std::nullopt : std::optional{FileFailure{FileFault::differs}};
        }
    }
}

std::optional<FileFailure> sync_folder(const std::filesystem::path& folder) {
    const Descriptor opened{folder.empty() ? "." : folder, O_RDONLY | O_DIRECTORY | O_CLOEXEC};
    // Some file systems cannot sync a folder and say so with EINVAL.
    if (!opened.open() || (::fsync(opened.number()) != 0 && errno != EINVAL)) {
        return failed_with(errno);
    }
    return std::nullopt;
}

}  // namespace

std::optional<FileFailure> keep_file(const std::filesystem::path& file, std::string_view bytes) {
    const Beside beside{file};
    if (const auto failed = write_all(beside.path(), bytes)) {
        return failed;
    }
    if (const auto failed = compare(beside.path(), bytes)) {
        return failed;
    }
    if (::rename(beside.path().c_str(), file.c_str()) != 0) {
        return failed_with(errno);
    }
    return sync_folder(file.parent_path());
}

std::optional<FileFailure> keep_folder(const std::filesystem::path& folder) {
    if (::mkdir(folder.c_str(), 0777) == 0 || (errno == EEXIST && std::filesystem::is_directory(folder))) {
        return std::nullopt;
    }
    return failed_with(errno);
}

Error not_kept(const std::filesystem::path& file, const FileFailure& failure) {
    switch (failure.fault) {
        case FileFault::no_room:
            return storage_error(file.string(), "there is no room left",
                                 "no file was written; free some space or choose another folder");
        case FileFault::not_permitted:
            return storage_error(file.string(), "it cannot be written there",
                                 "no file was written; choose a folder or medium that takes files");
        case FileFault::gone:
            return storage_error(file.string(), "the folder is not there or does not answer",
                                 "no file was written; look whether the medium is in and the folder exists");
        case FileFault::differs:
            return storage_error(file.string(), "it does not hold what was written to it",
                                 "no file was written; use another medium");
        case FileFault::other:
            break;
    }
    // Not strerror(), which speaks the machine's language.
    return storage_error(file.string(), ::strerrordesc_np(failure.number),
                         "no file was written; choose another folder or name");
}

Result<void> write_whole(const std::filesystem::path& file, std::string_view bytes) {
    if (const auto failed = keep_file(file, bytes)) {
        return not_kept(file, *failed);
    }
    return boost::outcome_v2::success();
}

}  // namespace wetfront
