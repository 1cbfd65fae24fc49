// SPDX-License-Identifier: Apache-2.0
#include "cli_run.h"
#include "records/record_text.h"

namespace wetfront::test {
namespace {

TEST(TemplateCommandTest, the_example_of_each_kind_is_a_template_file_that_reads_back) {
    for (const auto& [kind, name] : EnumNames<TimerKind>::all) {
        const auto result = run({"example", "template", "--kind", std::string{name}});
        EXPECT_EQ(result.status, 0) << result.err;
        const auto read = parse_template_file(result.out);
        ASSERT_TRUE(read) << name << ": " << read.error().text();
        EXPECT_EQ(read.value(), generic_template(kind)) << name;
    }
}

TEST(TemplateCommandTest, without_a_kind_the_example_is_a_trimmed_timer) {
    EXPECT_EQ(run({"example", "template"}).out, run({"example", "template", "--kind", "trimmed"}).out);
}

TEST(TemplateCommandTest, the_schema_is_one_json_object_about_template_files) {
    const auto schema = run({"schema", "template"}).json();
    EXPECT_EQ(schema.at("title"), "Wetfront template file");
    EXPECT_TRUE(schema.at("properties").contains("template"));
}

}  // namespace
}  // namespace wetfront::test
