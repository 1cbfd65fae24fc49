# SPDX-License-Identifier: Apache-2.0
# Extracts every text for people into the *.ts catalogues of one folder.
#   cmake -DLUPDATE=<program> -DSOURCE_DIR=<tree> -DCOPY_DIR=<scratch> -DCATALOGUES=<folder of .ts> -P update_texts.cmake
# lupdate can take WF_TEXT for one of its own functions (-tr-function-alias), but then names the context after the class
# or namespace around it, which core code moves about freely. So it reads a copy in which WF_TEXT("...") says
# QT_TRANSLATE_NOOP("core", "..."): one context, the one in which Formatter looks texts up.
foreach(needed LUPDATE SOURCE_DIR COPY_DIR CATALOGUES)
  if(NOT DEFINED ${needed})
    message(FATAL_ERROR "update_texts: ${needed} is not set")
  endif()
endforeach()

file(REMOVE_RECURSE ${COPY_DIR})
file(GLOB_RECURSE sources RELATIVE ${SOURCE_DIR}
  ${SOURCE_DIR}/core/*.h ${SOURCE_DIR}/core/*.cpp ${SOURCE_DIR}/ui/*.h ${SOURCE_DIR}/ui/*.cpp ${SOURCE_DIR}/ui/*.qml
  ${SOURCE_DIR}/app/*.h ${SOURCE_DIR}/app/*.cpp ${SOURCE_DIR}/app/*.qml)
foreach(source ${sources})
  file(READ ${SOURCE_DIR}/${source} text)
  string(REPLACE "#define WF_TEXT" "#define WF_TEXT_IN_PROGRAMS" text "${text}")
  string(REPLACE "WF_TEXT(" "QT_TRANSLATE_NOOP(\"core\", " text "${text}")
  file(WRITE ${COPY_DIR}/${source} "${text}")
endforeach()

file(GLOB catalogues ${CATALOGUES}/*.ts)
if(NOT catalogues)
  message(FATAL_ERROR "update_texts: no .ts file in ${CATALOGUES}")
endif()
execute_process(COMMAND ${LUPDATE} -silent -recursive ${COPY_DIR} -locations none -no-obsolete -ts ${catalogues}
  COMMAND_ERROR_IS_FATAL ANY)
