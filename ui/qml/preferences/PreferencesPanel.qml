// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Controls
import Wetfront.Theme
import Wetfront.ViewModels

// How the program shows things. Switching units changes no record. Opens as it is loaded.
Item {
    id: asked

    required property SessionViewModel session

    Component.onCompleted: panel.open()

    Panel {
        id: panel

        title: qsTr("Language, units and light")

        contentHeight: body.implicitHeight

        ColumnLayout {
            id: body
            anchors.fill: parent
            spacing: Theme.space
            PlainWords {
                text: panel.title
                kind: "heading"
                Layout.fillWidth: true
            }
            ChoiceRow {
                label: qsTr("Language")
                model: asked.session.languages
                current: asked.session.language
                onChosen: value => asked.session.language = value
                Layout.fillWidth: true
            }
            ChoiceRow {
                label: qsTr("Units")
                model: [
                    {
                        value: "us",
                        text: qsTr("°F, ft, gpm")
                    },
                    {
                        value: "si",
                        text: qsTr("°C, m, L/min")
                    }
                ]
                current: asked.session.unitSystem
                onChosen: value => asked.session.unitSystem = value
                Layout.fillWidth: true
            }
            ChoiceRow {
                label: qsTr("Light")
                model: [
                    {
                        value: "sun",
                        text: qsTr("Sun")
                    },
                    {
                        value: "shade",
                        text: qsTr("Shade")
                    },
                    {
                        value: "night",
                        text: qsTr("Night")
                    }
                ]
                current: asked.session.theme
                onChosen: value => asked.session.theme = value
                Layout.fillWidth: true
            }
            Flow {
                spacing: Theme.space
                layoutDirection: Qt.RightToLeft
                Layout.fillWidth: true
                ActionButton {
                    text: qsTr("Done")
                    kind: "primary"
                    onClicked: panel.close()
                }
                ActionButton {
                    text: qsTr("Setting templates")
                    pictogram: "list"
                    visible: !asked.session.readOnly && !asked.session.place.startsWith("template") && asked.session.place !== "copies" && asked.session.place !== "sheets"
                    onClicked: {
                        panel.close();
                        asked.session.showTemplates();
                    }
                }
                ActionButton {
                    text: qsTr("Copies of the records")
                    pictogram: "sheet"
                    visible: asked.session.place.startsWith("house")
                    onClicked: {
                        panel.close();
                        asked.session.showCopies();
                    }
                }
                ActionButton {
                    text: qsTr("Records to and from other machines")
                    pictogram: "forward"
                    visible: !asked.session.readOnly && asked.session.place.startsWith("house")
                    onClicked: {
                        panel.close();
                        asked.session.showBundles();
                    }
                }
            }
        }
    }
}
