// SPDX-License-Identifier: Apache-2.0
#include "base/whole_file.h"

#include <gtest/gtest.h>

#include <fcntl.h>
#include <unistd.h>

#include <cerrno>
#include <fstream>
#include <iterator>
#include <set>

#include "support/full_disk.h"

namespace wetfront::test {
namespace {

/// A medium that fails one call, or changes a byte behind the program's back.
class BadMedium {
public:
    enum class Does { fail_open, fail_sync, lose_a_byte, flip_a_byte };
    BadMedium(Does does, int number) : does_{does}, number_{number} { present() = this; }
    ~BadMedium() { present() = nullptr; }
    BadMedium(const BadMedium&) = delete;
    BadMedium& operator=(const BadMedium&) = delete;

    [[nodiscard]] static BadMedium*& present() {
        static BadMedium* medium = nullptr;
        return medium;
    }
    [[nodiscard]] bool fails(Does call) const {
        if (does_ == call) {
            errno = number_;
        }
        return does_ == call;
    }
    void spoil(int file) const {
        if (does_ == Does::lose_a_byte) {
            EXPECT_EQ(::ftruncate(file, ::lseek(file, 0, SEEK_END) - 1), 0);
        } else if (does_ == Does::flip_a_byte) {
            EXPECT_EQ(::pwrite(file, "#", 1, 5), 1);
        }
    }

private:
    Does does_;
    int number_;
};

class WholeFileTest : public testing::Test {
protected:
    WholeFileTest() {
        std::filesystem::remove_all(folder_);
        std::filesystem::create_directories(folder_);
    }
    ~WholeFileTest() override { std::filesystem::remove_all(folder_); }

    [[nodiscard]] std::string content() const {
        std::ifstream stream{file_, std::ios::binary};
        return {std::istreambuf_iterator<char>{stream}, {}};
    }
    [[nodiscard]] std::size_t files() const {
        return static_cast<std::size_t>(std::distance(std::filesystem::directory_iterator{folder_}, {}));
    }
    void expect_not_kept(FileFault fault) {
        std::ofstream{file_} << "what was there";
        const auto failed = keep_file(file_, "the new bytes of it");
        ASSERT_TRUE(failed);
        EXPECT_EQ(failed->fault, fault);
        EXPECT_EQ(content(), "what was there");
        EXPECT_EQ(files(), 1U) << "nothing is left beside it";
    }

    std::filesystem::path folder_ =
        std::filesystem::path{testing::TempDir()} / ("wetfront-whole-file-" + std::to_string(::getpid()));
    std::filesystem::path file_ = folder_ / "sheet.pdf";
};

TEST_F(WholeFileTest, what_is_kept_reads_back_and_stands_alone) {
    std::string bytes(200'000, 'a');
    bytes[70'000] = '\0';
    EXPECT_FALSE(keep_file(file_, bytes));
    EXPECT_EQ(content(), bytes);
    EXPECT_FALSE(keep_file(file_, "shorter"));
    EXPECT_EQ(content(), "shorter");
    EXPECT_EQ(files(), 1U);
}

TEST_F(WholeFileTest, a_full_medium_has_no_room_and_keeps_what_was_there) {
    std::ofstream{file_} << "what was there";
    std::optional<FileFailure> failed;
    {
        const FullDisk full{1000};
        failed = keep_file(file_, std::string(5000, 'x'));
    }
    ASSERT_TRUE(failed);
    EXPECT_EQ(failed->fault, FileFault::no_room);
    EXPECT_EQ(content(), "what was there");
    EXPECT_EQ(files(), 1U);
    const BadMedium medium{BadMedium::Does::fail_sync, ENOSPC};
    expect_not_kept(FileFault::no_room);
}

TEST_F(WholeFileTest, a_medium_that_changes_or_loses_a_byte_is_found_out) {
    {
        const BadMedium medium{BadMedium::Does::flip_a_byte, 0};
        expect_not_kept(FileFault::differs);
    }
    const BadMedium medium{BadMedium::Does::lose_a_byte, 0};
    expect_not_kept(FileFault::differs);
}

TEST_F(WholeFileTest, a_medium_that_takes_nothing_is_not_permitted) {
    {
        const BadMedium medium{BadMedium::Does::fail_open, EROFS};
        expect_not_kept(FileFault::not_permitted);
    }
    const BadMedium medium{BadMedium::Does::fail_open, EACCES};
    expect_not_kept(FileFault::not_permitted);
}

TEST_F(WholeFileTest, a_medium_that_was_pulled_is_gone) {
    {
        const BadMedium medium{BadMedium::Does::fail_sync, EIO};
        expect_not_kept(FileFault::gone);
    }
    std::filesystem::remove_all(folder_);
    const auto failed = keep_file(file_, "bytes");
    ASSERT_TRUE(failed);
    EXPECT_EQ(failed->fault, FileFault::gone);
}

TEST_F(WholeFileTest, a_link_of_that_name_is_replaced_and_what_it_leads_to_stays) {
    const auto elsewhere = folder_ / "elsewhere";
    std::ofstream{elsewhere} << "another file";
    std::filesystem::create_symlink(elsewhere, file_);
    EXPECT_FALSE(keep_file(file_, "bytes"));
    EXPECT_FALSE(std::filesystem::is_symlink(file_));
    EXPECT_EQ(content(), "bytes");
    std::ifstream stream{elsewhere};
    EXPECT_EQ((std::string{std::istreambuf_iterator<char>{stream}, {}}), "another file");
}

TEST_F(WholeFileTest, each_fault_has_words_and_names_the_file) {
    std::filesystem::create_directories(file_);
    const auto refused = write_whole(file_, "bytes");
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().kind, Error::Kind::storage);
    std::set<std::string> words;
    for (const auto fault : {FileFault::no_room, FileFault::not_permitted, FileFault::gone,
                             FileFault::differs, FileFault::other}) {
        const auto text = not_kept(file_, {fault, EISDIR}).text();
        EXPECT_NE(text.find("sheet.pdf"), std::string::npos) << text;
        words.insert(text);
    }
    EXPECT_EQ(words.size(), 5U);
}

}  // namespace
}  // namespace wetfront::test

// The linker leads the calls of the library here (--wrap).
// NOLINTBEGIN(bugprone-reserved-identifier,cert-dcl37-c,cert-dcl51-cpp): the linker's names
extern "C" {

int __real_open(const char* path, int flags, ...);
int __real_fsync(int descriptor);

int __wrap_open(const char* path, int flags, mode_t mode) {
    using wetfront::test::BadMedium;
    const auto* medium = BadMedium::present();
    if (medium != nullptr && (flags & O_CREAT) != 0 && medium->fails(BadMedium::Does::fail_open)) {
        return -1;
    }
    return __real_open(path, flags, mode);
}

int __wrap_fsync(int descriptor) {
    using wetfront::test::BadMedium;
    const auto* medium = BadMedium::present();
    if (medium != nullptr && medium->fails(BadMedium::Does::fail_sync)) {
        return -1;
    }
    const int synced = __real_fsync(descriptor);
    if (medium != nullptr && (::fcntl(descriptor, F_GETFL) & O_ACCMODE) == O_WRONLY) {
        medium->spoil(descriptor);
    }
    return synced;
}
}
// NOLINTEND(bugprone-reserved-identifier,cert-dcl37-c,cert-dcl51-cpp)
