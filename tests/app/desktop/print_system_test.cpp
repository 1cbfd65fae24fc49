// SPDX-License-Identifier: Apache-2.0
#include "desktop/print_system.h"

#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QTemporaryDir>

namespace wetfront::ui {
namespace {

/// A command lp of the test's own, the only one on the path.
class PrintSystemTest : public testing::Test {
protected:
    PrintSystemTest() { qputenv("PATH", folder_.path().toUtf8()); }
    ~PrintSystemTest() override { qputenv("PATH", path_before_); }
    void install(const QByteArray& does) const {
        QFile script{folder_.filePath(QStringLiteral("lp"))};
        ASSERT_TRUE(script.open(QIODevice::WriteOnly));
        script.write("#!/bin/sh\n" + does + "\n");
        script.close();
        script.setPermissions(QFile::ReadOwner | QFile::WriteOwner | QFile::ExeOwner);
    }
    [[nodiscard]] QByteArray read(const char* name) const {
        QFile file{folder_.filePath(QString::fromLatin1(name))};
        return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray{"no such file"};
    }

    QTemporaryDir folder_;
    QByteArray path_before_ = qgetenv("PATH");
    QByteArray pdf_{"%PDF-1.7\n\0\xFF any bytes", 21};
};

TEST_F(PrintSystemTest, the_printer_gets_every_byte_as_it_is) {
    const QByteArray folder = folder_.path().toUtf8();
    install("echo \"$@\" > " + folder + "/asked; /bin/cat > " + folder + "/got");
    const auto result = print_file_bytes(pdf_, QStringLiteral("office"), 2);
    ASSERT_TRUE(result) << result.error().text();
    EXPECT_EQ(read("got"), pdf_);
    EXPECT_EQ(read("asked"), "-d office -n 2\n");
}

TEST_F(PrintSystemTest, many_sheets_are_one_job_in_their_order) {
    const QByteArray folder = folder_.path().toUtf8();
    install("echo \"$@\" >> " + folder + "/asked");
    const auto result =
        print_files({QStringLiteral("/b/2.pdf"), QStringLiteral("/a/1.pdf")}, QStringLiteral("office"), 1);
    ASSERT_TRUE(result) << result.error().text();
    EXPECT_EQ(read("asked"), "-d office -n 1 /b/2.pdf /a/1.pdf\n");
}

TEST_F(PrintSystemTest, a_printer_that_refuses_and_a_system_without_printing_are_said) {
    const auto none = print_file_bytes(pdf_, QStringLiteral("office"), 1);
    ASSERT_FALSE(none);
    EXPECT_NE(none.error().text().find("lp is not there"), std::string::npos) << none.error().text();
    install("/bin/cat > /dev/null; echo 'no such printer' >&2; exit 1");
    const auto refused = print_file_bytes(pdf_, QStringLiteral("office"), 1);
    ASSERT_FALSE(refused);
    EXPECT_NE(refused.error().text().find("no such printer"), std::string::npos) << refused.error().text();
}

}  // namespace
}  // namespace wetfront::ui
