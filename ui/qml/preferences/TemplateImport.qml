// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Controls
import Wetfront.Theme
import Wetfront.ViewModels

// Adds a template from a file: choose the file, see what it is, then say yes. Opens as it is loaded.
Item {
    id: asked

    required property TemplatesViewModel templates
    readonly property var offered: templates.offered
    readonly property bool looking: offered["name"] !== undefined

    Component.onCompleted: {
        templates.lookForFiles();
        panel.open();
    }

    Panel {
        id: panel

        property string file
        property string problem

        function look(path: string): void {
            problem = asked.templates.lookAt(path);
        }

        title: qsTr("Add a template from a file")
        contentHeight: body.implicitHeight
        onClosed: asked.templates.dropOffered()

        ScrollColumn {
            id: body
            anchors.fill: parent
            margin: 0
            PlainWords {
                text: panel.title
                kind: "heading"
                Layout.fillWidth: true
            }
            Repeater {
                model: asked.looking ? 1 : 0
                delegate: ColumnLayout {
                    spacing: Theme.space
                    Layout.fillWidth: true
                    PlainWords {
                        text: asked.offered["name"] ?? ""
                        kind: "title"
                        Layout.fillWidth: true
                    }
                    PlainWords {
                        text: [asked.offered["detail"], asked.offered["note"]].filter(part => part).join("\n")
                        Layout.fillWidth: true
                    }
                    PlainWords {
                        text: asked.offered["lines"]?.join(", ") ?? ""
                        Layout.fillWidth: true
                    }
                    ErrorLine {
                        text: asked.offered["known"] ?? ""
                        Layout.fillWidth: true
                    }
                }
            }
            Repeater {
                model: asked.looking ? 0 : 1
                delegate: ColumnLayout {
                    spacing: Theme.space
                    Layout.fillWidth: true
                    PlainWords {
                        text: asked.templates.files.length > 0 ? qsTr("Found in %1 and on what is plugged in:").arg(asked.templates.documents) : qsTr("No file is in %1, and none on a stick.").arg(asked.templates.documents)
                        Layout.fillWidth: true
                    }
                    Repeater {
                        model: asked.templates.files
                        delegate: ActionButton {
                            required property string modelData
                            text: modelData
                            pictogram: "sheet"
                            onClicked: panel.look(modelData)
                            Layout.fillWidth: true
                        }
                    }
                    TextFieldRow {
                        label: qsTr("Another file, with its folder")
                        text: panel.file
                        onEdited: text => panel.file = text
                        maximumLength: 1000
                        Layout.fillWidth: true
                    }
                    ActionButton {
                        text: qsTr("Look at that file")
                        enabled: panel.file.length > 0
                        onClicked: panel.look(panel.file)
                    }
                }
            }
            ErrorLine {
                text: panel.problem
                Layout.fillWidth: true
            }
            RowLayout {
                spacing: Theme.gap
                Layout.alignment: Qt.AlignRight
                ActionButton {
                    text: asked.looking ? qsTr("Don't add it") : qsTr("Cancel")
                    onClicked: panel.close()
                }
                ActionButton {
                    visible: asked.looking
                    text: qsTr("Add this template")
                    kind: "primary"
                    onClicked: {
                        panel.problem = asked.templates.addOffered();
                        if (panel.problem.length === 0)
                            panel.close();
                    }
                }
            }
        }
    }
}
